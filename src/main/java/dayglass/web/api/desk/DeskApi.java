package dayglass.web.api.desk;

import dayglass.desk.rental.Desk;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Handler;
import java.util.function.UnaryOperator;

/** Every address of the desk. */
public final class DeskApi {
    private DeskApi() {}

    /**
     * Adds them.
     *
     * @param once makes a handler that creates money or bookings safe to be called twice
     */
    public static void addTo(RoutesConfig routes, Desk desk, UnaryOperator<Handler> once) {
        new DeskRulesApi(desk.rules()).addTo(routes);
        new PackageApi(desk.pricing()).addTo(routes);
        new FindApi(desk.finder(), desk.pricing()).addTo(routes);
        RentalApi rentals = new RentalApi(desk);
        rentals.addTo(routes, once);
        new QuoteApi(desk, rentals.acts()).addTo(routes, once);
    }
}

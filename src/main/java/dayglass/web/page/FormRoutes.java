package dayglass.web.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Handler;
import io.javalin.http.HttpStatus;
import java.util.Map;

/** Addresses that only take forms. Whoever reloads the page of a refused form asks for them, and is led to the page. */
public final class FormRoutes {
    private FormRoutes() {}

    /**
     * Takes a form at an address.
     *
     * @param page where the form stands, with the address's own parameters in braces
     */
    public static void take(RoutesConfig routes, String address, String page, Handler taken) {
        routes.post(address, taken);
        routes.get(address, ctx -> ctx.redirect(filled(page, ctx.pathParamMap()), HttpStatus.SEE_OTHER));
    }

    /** What is no number names nothing, and must not become a part of another address. */
    private static String filled(String page, Map<String, String> parameters) {
        String address = page;
        for (Map.Entry<String, String> parameter : parameters.entrySet()) {
            String number = parameter.getValue().matches("[0-9]{1,18}") ? parameter.getValue() : "0";
            address = address.replace("{" + parameter.getKey() + "}", number);
        }
        return address;
    }
}

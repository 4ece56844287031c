package dayglass.shelf.desk;

import dayglass.desk.paper.Invoice;
import dayglass.desk.paper.Item;
import dayglass.desk.rental.Charge;
import dayglass.desk.rental.Rental;
import dayglass.wire.Json;
import java.util.ArrayList;
import java.util.List;

/** An invoice with its lines; it is read and never written, since it follows from its rental. */
public final class InvoiceJson {
    private InvoiceJson() {}

    public static Json.Obj write(Rental.Id id, Invoice invoice) {
        Rental rental = invoice.rental();
        Rental.Ending ending = rental.ending().orElseThrow();
        Json.Members taxes = Json.object();
        invoice.taxes().forEach((code, amount) -> taxes.put(code, Amounts.write(amount)));
        return Json.object()
                .put("number", invoice.number())
                .put("rentalId", id.number())
                .put("rentalNumber", rental.number())
                .put("quoteId", rental.quote().number())
                .put("customer", QuoteJson.write(rental.customer()))
                .put("cancelled", ending.cancelled())
                .put("issuedAt", ending.at().toString())
                .put("issuedBy", ending.by().number())
                .put("currency", invoice.total().currency().code())
                .put(
                        "hired",
                        Json.list(
                                invoice.hired().stream().map(InvoiceJson::hired).toList()))
                .put("charged", Json.list(charged(invoice)))
                .put("net", Amounts.write(invoice.net()))
                .put("taxes", taxes.build())
                .put("total", Amounts.write(invoice.total()))
                .put("deposit", RentalJson.write(rental.deposit()))
                .put("toPay", Amounts.write(invoice.toPay()))
                .build();
    }

    private static Json hired(Item item) {
        Json.Members members = Json.object().put("what", item.what());
        item.dates()
                .ifPresent(dates -> members.put("firstDay", dates.from().toString())
                        .put("lastDay", dates.lastDay().toString()));
        return amounts(members, item);
    }

    private static List<Json> charged(Invoice invoice) {
        List<Json> lines = new ArrayList<>();
        for (int at = 0; at < invoice.charged().size(); at++) {
            Item item = invoice.charged().get(at);
            Charge charge = invoice.rental().charges().get(at);
            Json.Members members = Json.object()
                    .put("what", item.what())
                    .put("kind", charge.kind().word())
                    .put("at", charge.at().toString());
            charge.reverses().ifPresent(reversed -> members.put("reverses", reversed));
            lines.add(amounts(members, item));
        }
        return lines;
    }

    private static Json amounts(Json.Members members, Item item) {
        return members.put(
                        "parts",
                        Json.list(item.parts().stream().map(InvoiceJson::part).toList()))
                .put("net", Amounts.write(item.net()))
                .put("total", Amounts.write(item.total()))
                .build();
    }

    private static Json part(Item.Part part) {
        return Json.object()
                .put("kind", part.sort().word())
                .put("name", part.name())
                .put("amount", Amounts.write(part.amount()))
                .build();
    }
}

package dayglass.desk.quote;

import dayglass.base.Money;
import dayglass.desk.price.PackagePrice;
import dayglass.house.Person;
import java.time.LocalDate;

/**
 * What one revision of a quote promises.
 *
 * @param validUntil the last day on which it can be taken up
 * @param deposit asked for at the handover
 * @param terms as they stood when it was issued
 */
public record Promise(
        PackagePrice price,
        LocalDate issuedOn,
        Person.Id issuedBy,
        LocalDate validUntil,
        Money deposit,
        String terms) {}

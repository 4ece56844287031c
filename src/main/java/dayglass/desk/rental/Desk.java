package dayglass.desk.rental;

import dayglass.desk.KeptRules;
import dayglass.desk.find.Finder;
import dayglass.desk.price.PricePackage;
import dayglass.desk.quote.MakeQuote;
import dayglass.desk.quote.Quotes;

/** All that is known and done at the desk, in one hand. */
public record Desk(
        KeptRules rules,
        PricePackage pricing,
        Finder finder,
        Quotes quotes,
        MakeQuote makeQuote,
        Rentals rentals,
        RunRental runRental,
        RentIn rentIn,
        EndRental endRental,
        LetOut letOut) {}

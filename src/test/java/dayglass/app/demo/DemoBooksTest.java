package dayglass.app.demo;

import static dayglass.books.BookHouse.done;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.app.Rooms;
import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.books.report.CostReport;
import dayglass.books.report.CostReport.Basis;
import dayglass.books.report.CostReport.By;
import dayglass.job.Job;
import dayglass.planning.Priced;
import dayglass.storage.Database;
import dayglass.storage.books.ChainCheck;
import dayglass.support.Served;
import dayglass.wire.costing.CostingRequestReader;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoBooksTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    @Test
    void theDemoHasOrdersInvoicesAndAClosedWeek() {
        try (Rooms rooms = Served.roomsAt(folder, "2027-02-01")) {
            Job.Id job = done(rooms.importJob()
                            .importFrom(CostingRequestReader.read(DemoData.bytes("the-salt-ferry.json"))
                                    .fold(read -> read, faults -> {
                                        throw new AssertionError(faults);
                                    })))
                    .id();
            Priced.Kept priced = (Priced.Kept) done(rooms.makeCosting().ofJob(job, Optional.empty()));
            DemoBooks.fill(rooms.books(), rooms.costCodes(), job, priced.costing());
            assertEquals(
                    Optional.of(LocalDate.of(2027, 3, 7)), rooms.books().close().closedThrough(job));
            assertEquals(2, rooms.books().invoices().of(job).size());
            Currency pounds = Currency.of("GBP");
            CostReport now = CostReport.of(
                    By.CODE, Basis.GROSS, pounds, rooms.costFigures().of(job, Optional.of(LocalDate.of(2027, 3, 7))));
            assertEquals(Money.of("GBP", "1525.00"), now.figures("740").actual());
            assertEquals(Money.of("GBP", "-15.00"), now.figures("740").variance());
            assertTrue(now.figures("710").accrued().signum() > 0, "used in the week and not invoiced");
            assertEquals(
                    now.figures("710").estimate(), now.figures("710").finalCost(), "nothing is lost or counted twice");
        }
        try (Database database = Database.open(folder.resolve("dayglass.db"))) {
            assertEquals(List.of(), ChainCheck.of(database).findings());
        }
    }
}

package dayglass.books.post;

import static dayglass.books.BookHouse.EUR;
import static dayglass.books.BookHouse.MONDAY;
import static dayglass.books.BookHouse.done;
import static dayglass.books.BookHouse.eur;
import static dayglass.books.BookHouse.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Money;
import dayglass.base.Stored;
import dayglass.books.BookHouse;
import dayglass.books.chart.Chart;
import dayglass.books.entry.Amounts;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Exchange;
import dayglass.books.entry.Kind;
import dayglass.books.entry.Posted;
import dayglass.books.period.JobCalendars;
import dayglass.books.period.PeriodCalendar;
import dayglass.books.report.CostReport;
import dayglass.books.report.CostReport.Basis;
import dayglass.books.report.CostReport.By;
import dayglass.books.report.CostReport.Figures;
import dayglass.house.Person;
import dayglass.house.Role;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InvoicesAndPeriodsTest {
    private static final LocalDate SUNDAY = MONDAY.plusDays(6);

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    @SuppressWarnings("NullAway.Init") // set before each test
    private BookHouse house;

    @SuppressWarnings("NullAway.Init") // set before each test
    private Books books;

    @BeforeEach
    void open() {
        house = new BookHouse(folder);
        books = house.rooms.books();
    }

    @AfterEach
    void close() {
        house.close();
    }

    private Figures total(Optional<LocalDate> until) {
        return CostReport.of(By.CODE, Basis.NET, EUR, house.rooms.costFigures().of(house.job, until))
                .total();
    }

    private void assertTotal(String estimate, String committed, String actual, String accrued, String toComplete) {
        assertEquals(
                new Figures(eur(estimate), eur(committed), eur(actual), eur(accrued), eur(toComplete)),
                total(Optional.empty()));
    }

    private static Invoice.Line line(Posted order, String net, boolean more, String why) {
        return new Invoice.Line(Optional.of(order.id()), Invoice.Text.AS_ORDERED, eur(net), eur("0"), more, why);
    }

    private Invoice invoice(String number, Invoice.Line... lines) {
        return new Invoice(
                house.job,
                "Quay House",
                number,
                MONDAY.plusDays(2),
                MONDAY.plusDays(3),
                Exchange.none(MONDAY),
                List.of(lines));
    }

    @Test
    void aPartInvoiceLeavesTheRestCommittedAndTheLastOneTakesAll() {
        house.post(house.entry(Kind.ESTIMATE, "2340", "1200.00"));
        Posted order = house.post(house.entry(Kind.COMMITMENT, "2340", "1000.00"));
        assertTotal("1200", "1000", "0", "0", "200");
        done(books.matchInvoice().post(invoice("A-1", line(order, "400.00", true, ""))));
        assertTotal("1200", "600", "400", "0", "200");
        String unexplained = refused(books.matchInvoice().post(invoice("A-2", line(order, "650.00", false, ""))));
        assertTrue(unexplained.contains("/lines/0/explanation"), unexplained);
        assertTrue(unexplained.contains("50.00 EUR"), unexplained);
        assertTotal("1200", "600", "400", "0", "200");
        done(books.matchInvoice().post(invoice("A-2", line(order, "650.00", false, "an extra day"))));
        assertTotal("1200", "0", "1050", "0", "150");
        assertEquals(eur("0"), total(Optional.empty()).variance());
    }

    @Test
    void aSecondLineForAnOrderFindsWhatTheFirstLeft() {
        Posted order = house.post(house.entry(Kind.COMMITMENT, "2340", "100.00"));
        List<MatchInvoice.Match> matches = done(books.matchInvoice()
                .match(invoice("B", line(order, "60.00", true, ""), line(order, "40.00", false, ""))));
        assertEquals(
                List.of(false, false),
                matches.stream().map(MatchInvoice.Match::toExplain).toList());
        done(books.matchInvoice().post(invoice("B", line(order, "60.00", true, ""), line(order, "40.00", false, ""))));
        assertTotal("0", "0", "100", "0", "0");
    }

    @Test
    void anInvoiceIsPostedOnceAndACreditNoteIsExplained() {
        Posted order = house.post(house.entry(Kind.COMMITMENT, "2340", "100.00"));
        done(books.matchInvoice().post(invoice("C", line(order, "100.00", false, ""))));
        assertTrue(refused(books.matchInvoice().post(invoice("C", line(order, "100.00", false, "again"))))
                .contains("posted already"));
        assertTrue(refused(books.matchInvoice().post(invoice("C-CN", line(order, "-20.00", false, ""))))
                .contains("explanation"));
        done(books.matchInvoice().post(invoice("C-CN", line(order, "-20.00", false, "a day of rain"))));
        assertTotal("0", "0", "80", "0", "0");
    }

    @Test
    void anInvoiceTakenBackGivesBackWhatItDrewAndCanBeEnteredAnew() {
        Posted order = house.post(house.entry(Kind.COMMITMENT, "2340", "100.00"));
        Invoices.Kept first = done(books.matchInvoice().post(invoice("D", line(order, "70.00", true, ""))));
        done(books.post().reverse(first.posting(), MONDAY, "a wrong sum", false));
        assertTotal("0", "100", "0", "0", "0");
        assertTrue(refused(books.post().reverse(first.posting(), MONDAY, "twice", false))
                .contains("reversed already"));
        done(books.matchInvoice().post(invoice("D", line(order, "80.00", true, ""))));
        assertTotal("0", "20", "80", "0", "0");
        assertTrue(refused(books.post().reverse(order.id(), MONDAY, "cancelled", false))
                .contains("A part of the order"));
    }

    @Test
    void aCloseAccruesByChargeableDayAndTheNextOpeningReversesIt() {
        Posted order = house.post(house.entry(Kind.COMMITMENT, "2340", "1000.00"));
        done(books.matchInvoice().post(invoice("E", line(order, "300.00", true, ""))));
        assertEquals("2027-W14", books.close().next(house.job).orElseThrow().name());
        done(books.close().close(house.job, SUNDAY));
        // Five of ten shooting days are over, and 300 of those 500 are invoiced.
        assertEquals(new Figures(eur("0"), eur("500"), eur("300"), eur("200"), eur("0")), total(Optional.of(SUNDAY)));
        assertEquals(
                new Figures(eur("0"), eur("700"), eur("300"), eur("0"), eur("0")),
                total(Optional.of(SUNDAY.plusDays(1))));
        assertTrue(refused(books.post().post(List.of(house.entry(Kind.ACTUAL, "2340", "1.00"))))
                .contains("closed"));
    }

    @Test
    void aPeriodOpenedAgainAndClosedAgainAccruesNothingTwice() {
        Posted order = house.post(house.entry(Kind.COMMITMENT, "2340", "1000.00"));
        done(books.close().close(house.job, SUNDAY));
        done(books.close().reopen(house.job, "an invoice came late"));
        done(books.matchInvoice().post(invoice("F", line(order, "100.00", true, ""))));
        done(books.close().close(house.job, SUNDAY));
        assertEquals(new Figures(eur("0"), eur("500"), eur("100"), eur("400"), eur("0")), total(Optional.of(SUNDAY)));
        assertEquals(
                new Figures(eur("0"), eur("900"), eur("100"), eur("0"), eur("0")),
                total(Optional.of(SUNDAY.plusDays(1))));
        assertEquals(3, books.periods().acts().of(house.job).size());
    }

    @Test
    void periodsCloseInOrderAndOnlyAnOwnerOrAccountantOpensOne() {
        assertTrue(refused(books.close().close(house.job, SUNDAY)).contains("no period to close"));
        house.post(house.entry(Kind.ACTUAL, "2340", "1.00"));
        assertTrue(refused(books.close().close(house.job, SUNDAY.plusDays(7))).contains("2027-W14"));
        done(books.close().close(house.job, SUNDAY));
        Person.Id clerk = done(house.rooms.household().people().add(new Person("Ada Quill", Role.CLERK, false)))
                .id();
        house.rooms.household().whoActs().begin(clerk);
        try {
            assertTrue(refused(books.close().reopen(house.job, "why not")).contains("Only an owner"));
        } finally {
            house.rooms.household().whoActs().end();
        }
        assertEquals(Optional.of(SUNDAY), books.close().closedThrough(house.job));
        done(books.close().reopen(house.job, "a late invoice"));
        assertEquals(Optional.empty(), books.close().closedThrough(house.job));
    }

    @Test
    void anotherCalendarSettlesWhatIsClosed() {
        done(books.periods()
                .calendars()
                .keep(new Stored<>(
                        house.job,
                        0,
                        new JobCalendars.OfJob(
                                house.job,
                                new PeriodCalendar(
                                        Optional.of(LocalDate.of(2027, 4, 1)), List.of(LocalDate.of(2027, 4, 30)))))));
        house.post(house.entry(Kind.ACTUAL, "2340", "1.00"));
        done(books.close().close(house.job, LocalDate.of(2027, 4, 30)));
        assertEquals(Optional.empty(), books.close().next(house.job));
    }

    @Test
    void aJobWithAChartTakesItsCodesOnly() {
        done(books.charts()
                .keep(new Stored<>(house.job, 0, new Chart(house.job, List.of(new Chart.CostCode("2340", "Lenses"))))));
        house.post(house.entry(Kind.ACTUAL, "2340", "1.00"));
        assertTrue(refused(books.post().post(List.of(house.entry(Kind.ACTUAL, "99", "1.00"))))
                .contains("not in the job's chart"));
        assertTrue(refused(books.charts()
                        .keep(new Stored<>(house.job, 1, new Chart(house.job, List.of(new Chart.CostCode("1", ""))))))
                .contains("2340"));
    }

    @Test
    void aForeignInvoiceKeepsItsRateAndItsPaymentsSettleTheDifference() {
        Exchange booked = new Exchange(new BigDecimal("0.90"), "bank list", MONDAY);
        Invoice.Line line = new Invoice.Line(
                Optional.empty(),
                new Invoice.Text(Optional.of("freight"), Optional.of("2350"), Optional.empty(), Optional.empty(), ""),
                Money.of("USD", "100.01"),
                Money.of("USD", "0"),
                false,
                "not ordered");
        Invoices.Kept kept = done(books.matchInvoice()
                .post(new Invoice(house.job, "Far Freight", "G", MONDAY, MONDAY, booked, List.of(line))));
        // 100.01 at 0.90 is 90.009, rounded half up to 90.01.
        assertEquals(eur("90.01"), kept.baseGross());
        Invoices.Payment first = done(books.payInvoice().pay(kept.id(), payment("50.00", "0.92")));
        assertEquals(eur("46.00"), first.paid().base());
        Invoices.Payment second = done(books.payInvoice().pay(kept.id(), payment("50.01", "0.80")));
        assertEquals(kept.baseGross(), first.paid().booked().plus(second.paid().booked()));
        // What was paid: 46.00 + 40.01 (50.01 at 0.80 is 40.008).
        assertTotal("0", "0", "86.01", "0", "0");
        assertTrue(refused(books.payInvoice().pay(kept.id(), payment("0.01", "0.80")))
                .contains("owed on this invoice is 0.00 USD"));
    }

    @Test
    void anInvoiceIsTakenBackWholeWithWhatItsPaymentsMadeDearer() {
        Exchange booked = new Exchange(new BigDecimal("0.90"), "bank list", MONDAY);
        Invoice invoice = new Invoice(
                house.job, "Far Freight", "K", MONDAY, MONDAY, booked, List.of(freight("60.00"), freight("40.00")));
        Invoices.Kept kept = done(books.matchInvoice().post(invoice));
        done(books.payInvoice().pay(kept.id(), payment("100.00", "0.95")));
        assertTotal("0", "0", "95", "0", "0");
        Posted second = books.entries().posting(kept.posting()).get(1);
        assertTrue(refused(books.post().reverse(second.id(), MONDAY, "a wrong code", false))
                .contains("The invoice K of Far Freight is taken back whole"));
        assertEquals(
                3,
                done(books.post().reverse(second.id(), MONDAY, "a wrong code", true))
                        .size());
        assertTotal("0", "0", "0", "0", "0");
        Invoices.Kept anew = done(books.matchInvoice().post(invoice));
        done(books.payInvoice().pay(anew.id(), payment("100.00", "0.95")));
        assertTotal("0", "0", "95", "0", "0");
    }

    private static Invoice.Line freight(String net) {
        return new Invoice.Line(
                Optional.empty(),
                new Invoice.Text(Optional.of("freight"), Optional.of("2350"), Optional.empty(), Optional.empty(), ""),
                Money.of("USD", net),
                Money.of("USD", "0"),
                false,
                "not ordered");
    }

    /** A wrong year must not make the first period one that nobody can close from. */
    @Test
    void whatWasTakenBackOnItsOwnDayDoesNotBeginThePeriods() {
        house.post(house.entry(Kind.ACTUAL, "2340", "10.00"));
        Posted wrong = house.post(house.entry(Kind.ACTUAL, "2340", "10.00").on(LocalDate.of(1927, 4, 5)));
        assertEquals(
                LocalDate.of(1927, 4, 10),
                books.close().next(house.job).orElseThrow().lastDay());
        Stored<dayglass.job.Job.Id, JobCalendars.OfJob> weeks =
                books.periods().calendars().of(house.job);
        PeriodCalendar april = new PeriodCalendar(Optional.of(MONDAY), List.of(SUNDAY));
        Stored<dayglass.job.Job.Id, JobCalendars.OfJob> own = done(books.periods()
                .calendars()
                .keep(new Stored<>(weeks.id(), weeks.version(), new JobCalendars.OfJob(house.job, april))));
        assertTrue(refused(books.close().close(house.job, SUNDAY)).contains("no period for 1927-04-05"));
        done(books.periods().calendars().keep(new Stored<>(own.id(), own.version(), weeks.facts())));
        done(books.post().reverse(wrong.id(), LocalDate.of(1927, 4, 5), "a wrong year", false));
        assertEquals(SUNDAY, books.close().next(house.job).orElseThrow().lastDay());
    }

    @Test
    void aCodeOfWhatWasTakenBackMayBeMissingFromAChart() {
        Posted uncoded = house.post(house.entry(Kind.ACTUAL, "", "10.00"));
        Stored<dayglass.job.Job.Id, Chart> none = books.charts().of(house.job);
        Chart chart = new Chart(house.job, List.of(new Chart.CostCode("2340", "lenses")));
        Stored<dayglass.job.Job.Id, Chart> wanted = new Stored<>(none.id(), none.version(), chart);
        assertTrue(refused(books.charts().keep(wanted)).contains("reverse them"));
        done(books.post().reverse(uncoded.id(), MONDAY, "no code", false));
        done(books.charts().keep(wanted));
    }

    private static PayInvoice.Draft payment(String amount, String rate) {
        return new PayInvoice.Draft(
                MONDAY.plusDays(20),
                Money.of("USD", amount),
                new Exchange(new BigDecimal(rate), "bank list", MONDAY.plusDays(20)),
                Optional.empty());
    }

    @Test
    void aSplitOverPeriodsPostsAPartForEachWeek() {
        Entry entry = house.entry(
                Kind.ACTUAL, "2340", "Quay House", Amounts.at(Exchange.none(MONDAY), EUR, eur("100.00"), eur("19.00")));
        List<Posted> posted = done(books.post()
                .postSplit(
                        entry,
                        List.of(
                                new dayglass.books.entry.Split.Part("2340", "E1", BigInteger.TWO),
                                new dayglass.books.entry.Split.Part("2340", "E2", BigInteger.ONE)),
                        true));
        assertEquals(
                List.of("2027-04-11 38.89", "2027-04-16 27.78", "2027-04-11 19.44", "2027-04-16 13.89"),
                posted.stream()
                        .map(each -> each.entry().date() + " "
                                + each.entry().amounts().net().amount())
                        .toList());
    }

    @Test
    void whatIsToCompleteStandsOnceHoweverTheReportIsRead() {
        house.post(house.entry(Kind.ESTIMATE, "2340", "1000.00"));
        house.post(house.entry(Kind.ESTIMATE, "2350", "100.00"));
        house.post(house.entry(Kind.COMMITMENT, "2340", "400.00"));
        house.post(house.entry(Kind.ACTUAL, "2350", "130.00"));
        for (By by : By.values()) {
            CostReport report =
                    CostReport.of(by, Basis.NET, EUR, house.rooms.costFigures().of(house.job, Optional.empty()));
            assertEquals(eur("600"), report.total().toComplete());
            assertEquals(eur("1130"), report.total().finalCost());
            assertEquals(eur("-30"), report.total().variance());
        }
    }
}

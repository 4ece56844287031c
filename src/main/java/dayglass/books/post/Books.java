package dayglass.books.post;

import dayglass.base.Transactions;
import dayglass.books.chart.Charts;
import dayglass.books.entry.Entries;
import dayglass.books.period.JobCalendars;
import dayglass.books.period.PeriodActs;
import dayglass.house.People;
import dayglass.house.WhoActs;
import dayglass.job.Jobs;

/** What the books consist of, and what is done to them. */
public record Books(Entries entries, Charts charts, Periods periods, Invoices invoices, House house) {
    /** Which days periods cover, and which are closed. */
    public record Periods(JobCalendars calendars, PeriodActs acts) {}

    /** What the books ask of the rest of the house. */
    public record House(Jobs jobs, People people, WhoActs whoActs, Transactions transactions) {}

    public PostEntries post() {
        return new PostEntries(this);
    }

    public ClosePeriods close() {
        return new ClosePeriods(this);
    }

    public AcceptPlan acceptPlan() {
        return new AcceptPlan(this);
    }

    public MatchInvoice matchInvoice() {
        return new MatchInvoice(this);
    }

    public PayInvoice payInvoice() {
        return new PayInvoice(this);
    }
}

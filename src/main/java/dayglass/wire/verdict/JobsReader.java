package dayglass.wire.verdict;

import dayglass.cost.scenario.Scenario;
import dayglass.cost.scenario.Spread;
import dayglass.cost.verdict.JobKind;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Place;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** The user's kinds of jobs, each with what is not sure of it. */
final class JobsReader {
    private static final int MOST_KINDS = 6;
    private static final int MOST_DAYS = 366;
    private static final int WEEK = 7;
    private static final BigDecimal MOST_DAYS_A_YEAR = BigDecimal.valueOf(MOST_DAYS);

    private JobsReader() {}

    /** One kind of job. */
    record Job(JobKind kind, Scenario.OfJobs unsure) {}

    static Read<List<Job>> jobs(Json json, Place place) {
        Reader<List<Job>> reader = Readers.notEmpty(Readers.list(Fields.object(JobsReader::job)));
        Read<List<Job>> jobs = reader.read(json, place);
        if (!jobs.isGood()) {
            return jobs;
        }
        if (jobs.get().size() > MOST_KINDS) {
            return place.fault("has more than " + MOST_KINDS + " kinds of jobs: put alike ones together");
        }
        BigDecimal days =
                jobs.get().stream().map(job -> job.kind().daysPerYear()).reduce(BigDecimal.ZERO, BigDecimal::add);
        return days.compareTo(MOST_DAYS_A_YEAR) > 0
                ? place.fault("come to " + days.toPlainString() + " days a year, which has 366: make them fewer")
                : jobs;
    }

    private static Read<Job> job(Fields fields) {
        Read<String> name = fields.required("name", Readers.name());
        Read<BigDecimal> perYear = fields.required("perYear", Decimals.decimal(0, MOST_DAYS));
        Read<Integer> days = fields.required("days", Readers.whole(1, MOST_DAYS));
        Read<Integer> prep = fields.optional("prepDays", Readers.whole(1, MOST_DAYS), 0);
        Read<Integer> week = fields.optional("daysPerWeek", Readers.whole(1, WEEK), WEEK);
        Read<Optional<Spread>> perYearSpread = fields.optional("perYearSpread", SpreadReader.between(0, MOST_DAYS));
        Read<Optional<Spread>> daysSpread = fields.optional("daysSpread", SpreadReader.between(1, MOST_DAYS));
        if (days.isGood() && prep.isGood() && prep.get() > days.get()) {
            fields.place().member("prepDays").fault("is more than days, which counts prep too: make it less");
        }
        if (days.isGood() && week.isGood() && days.get() > most(week.get())) {
            fields.place().member("days").fault("does not fit into 1100 calendar days at so few days a week");
        }
        return fields.build(() -> new Job(
                new JobKind(name.get(), perYear.get(), days.get(), prep.get(), week.get()),
                new Scenario.OfJobs(perYearSpread.get(), daysSpread.get())));
    }

    private static int most(int daysPerWeek) {
        return new JobKind("", BigDecimal.ZERO, 1, 0, daysPerWeek).mostDays();
    }
}

package dayglass.app.demo;

import dayglass.base.Money;
import dayglass.house.House;
import dayglass.inventory.booking.Occupation.BenchWork;
import dayglass.inventory.booking.Occupation.Kind;
import dayglass.inventory.condition.Observation;
import dayglass.inventory.condition.Part;
import dayglass.inventory.condition.Severity;
import dayglass.shelf.MoneyJson;
import dayglass.web.api.house.HouseJson;
import dayglass.wire.Fields;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What {@code demo-data/house.json} says. Units are named by their tags, and days are counted from the day on which the
 * demo is begun, so that the wall always shows something.
 */
record DemoFile(
        House house,
        String owner,
        List<RentedIn> rentedIn,
        List<Set> sets,
        List<Plan> plans,
        List<Note> notes,
        List<Stay> stays,
        List<Hold> holds) {
    private static final int FARTHEST_DAY = 3_650;

    /** A unit that belongs to somebody else. */
    record RentedIn(String tag, Model model, String serial, Agreement agreement, Money lateDay) {}

    record Model(String maker, String name) {}

    record Agreement(String owner, String number, int fromDay, int paidUpToDay, int dueBackDay) {}

    record Set(String name, boolean matched, List<String> members) {}

    record Plan(String tag, Optional<Integer> everyMonths, Optional<Integer> everyDaysOut, int lastDoneDay) {}

    /** @param picture the name of a file in {@code demo-data/pictures} */
    record Note(String tag, Observation seen, Optional<String> picture) {}

    record Stay(Kind kind, List<String> tags, Days days, String subject, Optional<BenchWork> bench, Way way) {}

    /** The first and the last day of use. */
    record Days(int first, int last) {}

    record Way(boolean wentOut, boolean cameBack) {}

    record Hold(String tag, Days days, int rank, String subject) {}

    static Reader<DemoFile> reader() {
        return Fields.object(fields -> {
            Read<House> house = fields.required("house", HouseJson.reader());
            Read<String> owner = fields.required("owner", Readers.name());
            Read<List<RentedIn>> rentedIn = fields.required("rentedIn", list(DemoFile::rentedIn));
            Read<List<Set>> sets = fields.required("sets", list(DemoFile::set));
            Read<List<Plan>> plans = fields.required("servicePlans", list(DemoFile::plan));
            Read<List<Note>> notes = fields.required("notes", list(DemoFile::note));
            Read<List<Stay>> stays = fields.required("stays", list(DemoFile::stay));
            Read<List<Hold>> holds = fields.required("holds", list(DemoFile::hold));
            return fields.build(() -> new DemoFile(
                    house.get(),
                    owner.get(),
                    rentedIn.get(),
                    sets.get(),
                    plans.get(),
                    notes.get(),
                    stays.get(),
                    holds.get()));
        });
    }

    private static <T> Reader<List<T>> list(Fields.Body<T> body) {
        return Readers.list(Fields.object(body));
    }

    private static Reader<Integer> day() {
        return Readers.whole(-FARTHEST_DAY, FARTHEST_DAY);
    }

    private static Reader<List<String>> tags() {
        return Readers.notEmpty(Readers.distinct(Readers.name()));
    }

    private static Read<RentedIn> rentedIn(Fields fields) {
        Read<String> tag = fields.required("tag", Readers.name());
        Read<String> maker = fields.required("maker", Readers.name());
        Read<String> model = fields.required("model", Readers.name());
        Read<String> serial = fields.required("serial", Readers.name());
        Read<String> owner = fields.required("owner", Readers.name());
        Read<String> agreement = fields.required("agreement", Readers.name());
        Read<Integer> from = fields.required("fromDay", day());
        Read<Integer> paid = fields.required("paidUpToDay", day());
        Read<Integer> due = fields.required("dueBackDay", day());
        Read<Money> late = fields.required("lateDay", MoneyJson.money());
        return fields.build(() -> new RentedIn(
                tag.get(),
                new Model(maker.get(), model.get()),
                serial.get(),
                new Agreement(owner.get(), agreement.get(), from.get(), paid.get(), due.get()),
                late.get()));
    }

    private static Read<Set> set(Fields fields) {
        Read<String> name = fields.required("name", Readers.name());
        Read<Boolean> matched = fields.required("matched", Readers.yesOrNo());
        Read<List<String>> members = fields.required("members", tags());
        return fields.build(() -> new Set(name.get(), matched.get(), members.get()));
    }

    private static Read<Plan> plan(Fields fields) {
        Read<String> tag = fields.required("tag", Readers.name());
        Read<Optional<Integer>> months = fields.optional("everyMonths", day());
        Read<Optional<Integer>> daysOut = fields.optional("everyDaysOut", day());
        Read<Integer> done = fields.required("lastDoneDay", day());
        return fields.build(() -> new Plan(tag.get(), months.get(), daysOut.get(), done.get()));
    }

    private static <T> Map<String, T> words(T[] values, Function<T, String> word) {
        return Arrays.stream(values).collect(Collectors.toMap(word, Function.identity()));
    }

    private static Read<Note> note(Fields fields) {
        Read<String> tag = fields.required("tag", Readers.name());
        Read<Part> part = fields.required("part", Readers.word(words(Part.values(), Part::word)));
        Read<String> finding = fields.required("finding", Readers.name());
        Read<Integer> severity = fields.required("severity", Readers.whole(0, Severity.MOST));
        Read<String> text = fields.required("words", Readers.name());
        Read<Optional<String>> picture = fields.optional("picture", Readers.name());
        return fields.build(() -> new Note(
                tag.get(),
                new Observation(part.get(), finding.get(), Severity.of(severity.get()), false, text.get()),
                picture.get()));
    }

    private static Read<Days> days(Fields fields) {
        Read<Integer> first = fields.required("firstDay", day());
        Read<Integer> last = fields.required("lastDay", day());
        return first.isGood() && last.isGood() ? Read.good(new Days(first.get(), last.get())) : Read.bad();
    }

    private static Read<Stay> stay(Fields fields) {
        Read<Kind> kind = fields.required("kind", Readers.word(words(Kind.values(), Kind::word)));
        Read<List<String>> of = fields.required("tags", tags());
        Read<Days> days = days(fields);
        Read<String> subject = fields.required("subject", Readers.name());
        Read<Optional<BenchWork>> bench = fields.optional("bench", Fields.object(DemoFile::bench));
        Read<Boolean> out = fields.optional("wentOut", Readers.yesOrNo(), false);
        Read<Boolean> back = fields.optional("cameBack", Readers.yesOrNo(), false);
        return fields.build(() ->
                new Stay(kind.get(), of.get(), days.get(), subject.get(), bench.get(), new Way(out.get(), back.get())));
    }

    private static Read<BenchWork> bench(Fields fields) {
        Read<String> findings = fields.required("findings", Readers.name());
        Read<String> work = fields.required("work", Readers.name());
        Read<String> parts = fields.required("parts", Readers.name());
        Read<Optional<Money>> cost = fields.optional("cost", MoneyJson.money());
        Read<Boolean> done = fields.required("done", Readers.yesOrNo());
        return fields.build(() -> new BenchWork(findings.get(), work.get(), parts.get(), cost.get(), done.get()));
    }

    private static Read<Hold> hold(Fields fields) {
        Read<String> tag = fields.required("tag", Readers.name());
        Read<Days> days = days(fields);
        Read<Integer> rank = fields.required("rank", Readers.whole(1, dayglass.inventory.booking.Hold.MOST_RANK));
        Read<String> subject = fields.required("subject", Readers.name());
        return fields.build(() -> new Hold(tag.get(), days.get(), rank.get(), subject.get()));
    }
}

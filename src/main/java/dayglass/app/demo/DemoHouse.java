package dayglass.app.demo;

import static dayglass.app.demo.DemoData.bytes;
import static dayglass.app.demo.DemoData.must;

import dayglass.base.Stored;
import dayglass.catalogue.LensModel;
import dayglass.catalogue.Supplier;
import dayglass.catalogue.Suppliers;
import dayglass.house.House;
import dayglass.house.Household;
import dayglass.house.Person;
import dayglass.inventory.Holding;
import dayglass.inventory.LensSet;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.BookUnits;
import dayglass.inventory.booking.FreeDays;
import dayglass.inventory.booking.Hold;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.Kind;
import dayglass.inventory.booking.Stay;
import dayglass.inventory.booking.Whereabouts;
import dayglass.inventory.condition.NoteCondition;
import dayglass.inventory.service.ServicePlan;
import dayglass.inventory.service.ServicePlans;
import dayglass.sheet.CsvText;
import dayglass.shelf.table.CardTables;
import dayglass.shelf.table.ImportReport;
import dayglass.shelf.table.ShelfImport;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Fills an empty house with the demo's: tables of models, units and rates as a user would bring them in, then sets, notes,
 * plans and bookings as the pages would enter them. Whatever is refused is a fault of the demo's files.
 */
public final class DemoHouse {
    private static final Duration HOLDS_LAST = Duration.ofDays(7);

    private final Into into;
    private final Instant now;

    /** The rooms that are filled. */
    public record Into(
            Household household,
            Shelf shelf,
            ShelfImport tables,
            Suppliers suppliers,
            CardTables cards,
            Whereabouts whereabouts,
            NoteCondition noteCondition,
            ServicePlans servicePlans) {}

    private DemoHouse(Into into) {
        this.into = into;
        this.now = into.whereabouts().clock().instant();
    }

    public static void fill(Into into) {
        DemoFile file = DemoFile.reader().read(bytes("house.json")).fold(read -> read, faults -> {
            throw new IllegalStateException("demo-data/house.json is faulty: " + faults);
        });
        new DemoHouse(into).fill(file);
    }

    private void fill(DemoFile file) {
        var settings = into.household().settings();
        must(settings.change(new Stored<>(House.Id.ONLY, settings.now().version(), file.house())));
        Stored<Person.Id, Person> owner = into.household().there().get(0);
        must(into.household()
                .people()
                .change(new Stored<>(
                        owner.id(),
                        owner.version(),
                        new Person(file.owner(), owner.facts().role(), false))));
        bringIn(ShelfImport.What.LENS_MODELS, "lens-models.csv");
        bringIn(ShelfImport.What.UNITS, "units.csv");
        file.rentedIn().forEach(this::rentIn);
        file.sets()
                .forEach(set -> must(into.shelf()
                        .sets()
                        .add(new LensSet(set.name(), set.matched(), units(set.members()), java.util.Map.of()))));
        putOnDesk(file.house());
        file.plans()
                .forEach(plan -> must(into.servicePlans()
                        .add(new ServicePlan(
                                unit(plan.tag()), plan.everyMonths(), plan.everyDaysOut(), day(plan.lastDoneDay())))));
        file.stays().forEach(this::enter);
        file.holds().forEach(this::hold);
        file.notes()
                .forEach(note -> must(into.noteCondition()
                        .note(
                                unit(note.tag()),
                                note.seen(),
                                List.of(),
                                note.picture().stream()
                                        .map(name -> bytes("pictures/" + name))
                                        .toList())));
    }

    private void bringIn(ShelfImport.What what, String file) {
        CsvText text = must(CsvText.read(bytes(file)));
        ImportReport report = must(into.tables().bringIn(new ShelfImport.Table(what, text, Optional.empty(), false)));
        if (!report.faulty().isEmpty()) {
            throw new IllegalStateException("demo-data/" + file + " has bad rows: " + report.faulty());
        }
    }

    /** The house with its own rates, in force since the year began. */
    private void putOnDesk(House house) {
        Supplier.Id self =
                must(into.suppliers().add(new Supplier(house.name(), true))).id();
        CsvText text = must(CsvText.read(bytes("house-rates.csv")));
        must(into.cards()
                .bringIn(
                        new CardTables.Heading(self, "Singles and sets", house.currency(), day(0).withDayOfYear(1)),
                        text));
    }

    private void rentIn(DemoFile.RentedIn from) {
        LensModel.Id model = into.shelf()
                .models()
                .named(from.model().maker(), from.model().name())
                .orElseThrow()
                .id();
        DemoFile.Agreement agreement = from.agreement();
        must(into.shelf()
                .units()
                .add(new Unit(
                        from.tag(),
                        Optional.of(model),
                        Optional.of(from.serial()),
                        new Holding.RentedIn(
                                agreement.owner(),
                                agreement.number(),
                                day(agreement.fromDay()),
                                day(agreement.paidUpToDay()),
                                day(agreement.dueBackDay()),
                                Optional.of(from.lateDay())),
                        Optional.empty(),
                        Unit.Papers.NONE,
                        List.of(),
                        Unit.Use.NONE,
                        Optional.empty())));
    }

    private House house() {
        return into.whereabouts().settings().now().facts();
    }

    private LocalDate day(int fromToday) {
        return now.atZone(house().zone()).toLocalDate().plusDays(fromToday);
    }

    private Stay stay(DemoFile.Days days) {
        return FreeDays.use(day(days.first()), day(days.last()), house());
    }

    private Unit.Id unit(String tag) {
        return into.shelf().units().tagged(tag).orElseThrow().id();
    }

    private List<Unit.Id> units(List<String> tags) {
        return tags.stream().map(this::unit).toList();
    }

    private void enter(DemoFile.Stay what) {
        Stay stay = stay(what.days());
        BookUnits.Entry entry = new BookUnits.Entry(
                what.kind(),
                stay.out(),
                stay.back(),
                what.subject(),
                what.kind() == Kind.BENCH
                        ? what.bench().or(() -> Optional.of(Occupation.BenchWork.NOT_YET))
                        : Optional.empty());
        for (Stored<Occupation.Id, Occupation> entered :
                must(into.whereabouts().bookUnits().add(units(what.tags()), entry))) {
            if (what.way().wentOut()) {
                Stored<Occupation.Id, Occupation> out =
                        must(into.whereabouts().handOver().out(entered, stay.out(), Optional.empty()));
                if (what.way().cameBack()) {
                    must(into.whereabouts().handOver().back(out, stay.back()));
                }
            }
        }
    }

    private void hold(DemoFile.Hold what) {
        Stay stay = stay(what.days());
        must(into.whereabouts()
                .holds()
                .add(new Hold(
                        unit(what.tag()),
                        stay.out(),
                        stay.back(),
                        what.rank(),
                        now.plus(HOLDS_LAST),
                        what.subject(),
                        into.whereabouts().whoActs().now(),
                        now)));
    }
}

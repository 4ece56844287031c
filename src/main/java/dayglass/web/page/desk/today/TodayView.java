package dayglass.web.page.desk.today;

import java.util.List;

/**
 * One day at the desk as the page shows it.
 *
 * @param isToday it is the day that it is now
 * @param clocks what is said where the day is not as long as others; else empty
 * @param lateCost what lateness would cost in all, each currency by itself; empty where nothing
 */
public record TodayView(
        String day,
        String earlier,
        String later,
        boolean isToday,
        String now,
        String clocks,
        List<Door> out,
        List<Door> back,
        List<Late> late,
        String lateCost,
        List<GiveBack> giveBack,
        List<Shortage> shorts,
        List<Test> testing) {
    public TodayView {
        out = List.copyOf(out);
        back = List.copyOf(back);
        late = List.copyOf(late);
        giveBack = List.copyOf(giveBack);
        shorts = List.copyOf(shorts);
        testing = List.copyOf(testing);
    }

    /**
     * For whom.
     *
     * @param address of the rental, or of a booking that belongs to none
     * @param more of a rental, who the customer is and for what
     */
    public record Who(String address, String title, String more) {}

    /** A unit. */
    public record Thing(String address, String tag, String model) {}

    /**
     * What passes the door together.
     *
     * @param since the day on which it should have gone, where that is another
     */
    public record Door(String hour, String since, boolean done, Who who, List<Thing> things) {
        public Door {
            things = List.copyOf(things);
        }
    }

    /**
     * What is late.
     *
     * @param costs what it costs so far, in words; empty where nothing is charged for it
     */
    public record Late(String due, String by, Who who, List<Thing> things, List<String> costs) {
        public Late {
            things = List.copyOf(things);
            costs = List.copyOf(costs);
        }
    }

    /** What goes back to its owner. */
    public record GiveBack(Thing thing, String owner, String due, String cost) {}

    /**
     * What stands in the way of a handover.
     *
     * @param toGet from whom and at what cost
     */
    public record Shortage(String at, Who who, List<String> toGet, List<String> missing, List<Hindered> hindered) {
        public Shortage {
            toGet = List.copyOf(toGet);
            missing = List.copyOf(missing);
            hindered = List.copyOf(hindered);
        }
    }

    /** A unit that cannot go. */
    public record Hindered(Thing thing, String booking, String why) {}

    /** A unit to be looked at. */
    public record Test(Thing thing, String notes, String why, String next, Who nextWho) {}
}

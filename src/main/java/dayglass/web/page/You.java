package dayglass.web.page;

import java.util.List;

/**
 * Who looks at a page. Every page's frame shows it and no page has anything to do with it, so it is not among what each
 * hands to its template: the frame asks here while the page is drawn.
 *
 * @param name empty where it was not said and several are there
 * @param people whom one may be
 * @param here the address to come back to after a choice
 */
public record You(String name, List<Choice> people, String here) {
    private static final You NOBODY = new You("", List.of(), "/");
    private static final ThreadLocal<You> LOOKING = ThreadLocal.withInitial(() -> NOBODY);

    public You {
        people = List.copyOf(people);
    }

    /** Somebody one may be. */
    public record Choice(long id, String name, boolean chosen) {}

    public static You now() {
        return LOOKING.get();
    }

    void lookAt(Runnable drawing) {
        LOOKING.set(this);
        try {
            drawing.run();
        } finally {
            LOOKING.remove();
        }
    }
}

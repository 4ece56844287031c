package dayglass.wire;

import dayglass.base.Fault;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;

/** On which line of a text the value at each fault stands; of a missing member, where its object begins. */
public final class FaultLines {
    private final Step root;

    private FaultLines(Step root) {
        this.root = root;
    }

    /**
     * Looks the faults up in their text.
     *
     * @param text JSON that could be parsed; where it could not, the fault's message names the line
     */
    public static FaultLines of(byte[] text, List<Fault> faults) {
        Step root = new Step(null);
        for (Fault fault : faults) {
            Step at = root;
            for (String name : steps(fault)) {
                Step parent = at;
                at = at.children.computeIfAbsent(name, missing -> new Step(parent));
            }
        }
        if (!root.children.isEmpty()) {
            try (JsonParser parser = JsonText.parser(text)) {
                walk(parser, root);
            }
        }
        return new FaultLines(root);
    }

    /** Counted from 1; empty for a fault of the whole text. */
    public OptionalInt lineOf(Fault fault) {
        Step at = root;
        for (String name : steps(fault)) {
            Step child = at.children.get(name);
            if (child == null) {
                return OptionalInt.empty();
            }
            at = child;
        }
        return at == root ? OptionalInt.empty() : at.line();
    }

    private static List<String> steps(Fault fault) {
        List<String> steps = List.of(fault.pointer().split("/", -1));
        return steps.subList(1, steps.size());
    }

    /** Goes down only where a fault lies below, so that depth and size elsewhere cost nothing. */
    private static void walk(JsonParser parser, Step root) {
        Deque<Step> open = new ArrayDeque<>();
        @Nullable Step next = root;
        for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
            if (token == JsonToken.PROPERTY_NAME) {
                next = open.element().children.get(Place.escape(parser.currentName()));
            } else if (token == JsonToken.END_OBJECT || token == JsonToken.END_ARRAY) {
                open.pop();
            } else {
                Step parent = open.peek();
                if (parent != null && parent.list) {
                    next = parent.children.get(Integer.toString(parent.entries++));
                }
                boolean opens = token == JsonToken.START_OBJECT || token == JsonToken.START_ARRAY;
                if (next != null) {
                    next.line = parser.currentTokenLocation().getLineNr();
                }
                if (next == null || next.children.isEmpty()) {
                    parser.skipChildren();
                } else if (opens) {
                    next.list = token == JsonToken.START_ARRAY;
                    next.entries = 0;
                    open.push(next);
                }
            }
        }
    }

    /** One step of the pointers, with what lies below. */
    private static final class Step {
        private final @Nullable Step parent;
        private final Map<String, Step> children = new HashMap<>();
        private boolean list;
        private int entries;
        private int line;

        Step(@Nullable Step parent) {
            this.parent = parent;
        }

        OptionalInt line() {
            for (Step at = this; at != null; at = at.parent) {
                if (at.line > 0) {
                    return OptionalInt.of(at.line);
                }
            }
            return OptionalInt.empty();
        }
    }
}

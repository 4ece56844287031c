package dayglass.wire;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A JSON value (RFC 8259) as it was written: members in their order, numbers as their literal.
 *
 * <p>Values may be nested as deep as their text allows; whoever walks one to its end must not do so by recursion
 * unless the depth is known to be small. Equality and {@code toString} recurse.
 */
public sealed interface Json {

    /** What the value is, for a sentence: {@code "an object"}. */
    String kind();

    /**
     * An object.
     *
     * @param members by name, in the order of the text; of a name given twice, the first value
     * @param repeated the names given more than once
     */
    record Obj(Map<String, Json> members, Set<String> repeated) implements Json {
        public Obj {
            members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
            repeated = Collections.unmodifiableSet(new LinkedHashSet<>(repeated));
        }

        @Override
        public String kind() {
            return "an object";
        }
    }

    record Arr(List<Json> entries) implements Json {
        public Arr {
            entries = List.copyOf(entries);
        }

        @Override
        public String kind() {
            return "a list";
        }
    }

    record Text(String value) implements Json {
        @Override
        public String kind() {
            return "text";
        }
    }

    /** A number by its literal: {@code 1}, {@code 1.0} and {@code 1e0} differ. */
    record Num(String literal) implements Json {
        @Override
        public String kind() {
            return "a number";
        }
    }

    record Bool(boolean value) implements Json {
        @Override
        public String kind() {
            return value ? "true" : "false";
        }
    }

    record Null() implements Json {
        @Override
        public String kind() {
            return "null";
        }
    }

    static Json text(String value) {
        return new Text(value);
    }

    static Json number(long value) {
        return new Num(Long.toString(value));
    }

    static Json bool(boolean value) {
        return new Bool(value);
    }

    static Json nothing() {
        return new Null();
    }

    static Json list(List<? extends Json> entries) {
        return new Arr(new ArrayList<>(entries));
    }

    static Json texts(List<String> values) {
        return new Arr(values.stream().map(Json::text).toList());
    }

    /** An empty object to be filled. */
    static Members object() {
        return new Members();
    }

    /** An object in the making. */
    final class Members {
        private final Map<String, Json> members = new LinkedHashMap<>();
        private final Set<String> repeated = new LinkedHashSet<>();

        private Members() {}

        public Members put(String name, Json value) {
            if (members.putIfAbsent(name, value) != null) {
                repeated.add(name);
            }
            return this;
        }

        public Members put(String name, String text) {
            return put(name, text(text));
        }

        public Members put(String name, long number) {
            return put(name, number(number));
        }

        public Members put(String name, boolean value) {
            return put(name, bool(value));
        }

        /** Adds the member unless its list is empty. */
        public Members putUnlessEmpty(String name, List<? extends Json> entries) {
            return entries.isEmpty() ? this : put(name, list(entries));
        }

        public Obj build() {
            return new Obj(members, repeated);
        }
    }
}

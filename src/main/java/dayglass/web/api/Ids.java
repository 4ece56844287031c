package dayglass.web.api;

import dayglass.base.Id;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.LongFunction;
import java.util.regex.Pattern;

/** Ids of other things inside a body: whole numbers from 1. */
public final class Ids {
    private static final Pattern NUMBER = Pattern.compile("[1-9][0-9]{0,17}");

    private Ids() {}

    public static <I extends Id> Reader<I> id(LongFunction<I> idOf) {
        return (json, place) -> json instanceof Json.Num number
                        && NUMBER.matcher(number.literal()).matches()
                ? Read.good(idOf.apply(Long.parseLong(number.literal())))
                : place.fault("must be an id: a whole number from 1 on");
    }

    /** A list without repetition; it may be empty. */
    public static <T> Reader<List<T>> distinct(Reader<T> entry) {
        return (json, place) -> {
            Read<List<T>> list = Readers.list(entry).read(json, place);
            Set<T> seen = new HashSet<>();
            boolean good = list.isGood();
            for (int at = 0; list.isGood() && at < list.get().size(); at++) {
                if (!seen.add(list.get().get(at))) {
                    place.entry(at).fault("stands in the list twice: keep one");
                    good = false;
                }
            }
            return good ? list : Read.bad();
        };
    }

    public static Json list(List<? extends Id> ids) {
        return Json.list(ids.stream().map(id -> Json.number(id.number())).toList());
    }
}

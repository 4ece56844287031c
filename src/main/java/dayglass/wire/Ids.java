package dayglass.wire;

import dayglass.base.Id;
import java.util.List;
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

    public static Json list(List<? extends Id> ids) {
        return Json.list(ids.stream().map(id -> Json.number(id.number())).toList());
    }
}

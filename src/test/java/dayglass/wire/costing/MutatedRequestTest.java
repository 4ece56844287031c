package dayglass.wire.costing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Fault;
import dayglass.cost.plan.Question;
import dayglass.wire.Checked;
import dayglass.wire.Json;
import dayglass.wire.JsonPrint;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Good requests changed at random: whatever comes in, a question or a list of faults comes out. */
class MutatedRequestTest {
    private static final List<String> GOOD = Requests.examples("[0-9]");
    private static final List<Json> ODDITIES = List.of(
            Json.nothing(),
            Json.bool(true),
            Json.number(0),
            Json.number(-1),
            new Json.Num("1e999999999"),
            new Json.Num("-0"),
            Json.text(""),
            Json.text("\ud800"),
            Json.text("2027-04-06"),
            Json.text("9999-12-31"),
            Json.text("999999999999999"),
            Json.text("shoot"),
            Json.text("hire"),
            Json.list(List.of()),
            Json.list(List.of(Json.list(List.of()), Json.number(7))),
            Json.object().build(),
            Json.object().put("from", "2027-04-06").build());

    @Property(tries = 2_000)
    void aRequestWithValuesChangedGivesAQuestionOrFaultsThatPointIntoIt(@ForAll Random random) {
        Json json = Requests.json(Requests.example(GOOD.get(random.nextInt(GOOD.size()))));
        int changes = 1 + random.nextInt(4);
        for (int i = 0; i < changes; i++) {
            json = mutate(json, random);
        }
        Json mutated = json;
        CostingRequestReader.request().readAll(mutated).fold(this::roundTrips, faults -> pointInto(mutated, faults));
    }

    @Property(tries = 2_000)
    void aTextWithCharactersChangedNeverFails(@ForAll Random random) {
        byte[] text = Requests.example(GOOD.get(random.nextInt(GOOD.size())));
        int changes = 1 + random.nextInt(3);
        for (int i = 0; i < changes; i++) {
            text[random.nextInt(text.length)] =
                    (byte) (random.nextBoolean() ? "{}[]\",:0-\\ue.".charAt(random.nextInt(13)) : random.nextInt(256));
        }
        Checked<Question> read = CostingRequestReader.read(text);
        assertTrue(read.fold(this::roundTrips, faults -> !faults.isEmpty()));
    }

    private boolean roundTrips(Question question) {
        byte[] written = JsonPrint.bytes(CostingRequestWriter.write(question));
        assertEquals(question, Requests.question(written), () -> new String(written, StandardCharsets.UTF_8));
        return true;
    }

    /** Every pointer leads to a value, or to a member that its object lacks. */
    private static boolean pointInto(Json root, List<Fault> faults) {
        for (Fault fault : faults) {
            Json at = root;
            List<String> steps = List.of(fault.pointer().split("/", -1));
            for (int i = 1; i < steps.size(); i++) {
                String step = steps.get(i).replace("~1", "/").replace("~0", "~");
                if (at instanceof Json.Arr list) {
                    at = list.entries().get(Integer.parseInt(step));
                } else {
                    Map<String, Json> members = ((Json.Obj) at).members();
                    assertTrue(members.containsKey(step) || i == steps.size() - 1, fault::pointer);
                    at = members.getOrDefault(step, Json.nothing());
                }
            }
        }
        return true;
    }

    private static Json mutate(Json json, Random random) {
        boolean here = random.nextInt(6) == 0;
        if (here || !(json instanceof Json.Obj || json instanceof Json.Arr)) {
            return ODDITIES.get(random.nextInt(ODDITIES.size()));
        }
        return json instanceof Json.Arr list ? mutate(list, random) : mutate((Json.Obj) json, random);
    }

    private static Json mutate(Json.Arr list, Random random) {
        List<Json> entries = new ArrayList<>(list.entries());
        if (entries.isEmpty()) {
            return list;
        }
        int index = random.nextInt(entries.size());
        switch (random.nextInt(5)) {
            case 0 -> entries.remove(index);
            case 1 -> entries.add(entries.get(index));
            default -> entries.set(index, mutate(entries.get(index), random));
        }
        return Json.list(entries);
    }

    private static Json mutate(Json.Obj object, Random random) {
        Map<String, Json> members = new LinkedHashMap<>(object.members());
        if (members.isEmpty()) {
            return object;
        }
        String name = List.copyOf(members.keySet()).get(random.nextInt(members.size()));
        Json value = members.getOrDefault(name, Json.nothing());
        switch (random.nextInt(6)) {
            case 0 -> members.remove(name);
            case 1 -> members.put("x" + name, value);
            case 2 -> {
                return new Json.Obj(members, Set.of(name));
            }
            default -> members.put(name, mutate(value, random));
        }
        return new Json.Obj(members, Set.of());
    }
}

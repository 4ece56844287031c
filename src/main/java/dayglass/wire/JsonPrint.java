package dayglass.wire;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;

/** Values into text: indented by two spaces, lines ended by LF, and the same text for the same value always. */
public final class JsonPrint {
    private static final JsonFactory FACTORY = JsonFactory.builder().build();

    /** Half a surrogate pair, which UTF-8 cannot hold: it is printed as its escape. */
    private static final Pattern LONE_SURROGATE = Pattern.compile("\\p{Cs}");

    private JsonPrint() {}

    /** The value as text, with a line end after it. Walks by recursion: for values that this program made. */
    public static String pretty(Json json) {
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = FACTORY.createGenerator(new Indented(), text)) {
            write(json, generator);
        }
        return escapeLoneSurrogates(text.toString()) + "\n";
    }

    /** The same in UTF-8. */
    public static byte[] bytes(Json json) {
        return pretty(json).getBytes(StandardCharsets.UTF_8);
    }

    private static void write(Json json, JsonGenerator generator) {
        if (json instanceof Json.Obj object) {
            generator.writeStartObject();
            for (Map.Entry<String, Json> member : object.members().entrySet()) {
                generator.writeName(member.getKey());
                write(member.getValue(), generator);
            }
            generator.writeEndObject();
        } else if (json instanceof Json.Arr list) {
            generator.writeStartArray();
            list.entries().forEach(entry -> write(entry, generator));
            generator.writeEndArray();
        } else if (json instanceof Json.Text text) {
            generator.writeString(text.value());
        } else if (json instanceof Json.Num number) {
            generator.writeNumber(number.literal());
        } else if (json instanceof Json.Bool bool) {
            generator.writeBoolean(bool.value());
        } else {
            generator.writeNull();
        }
    }

    private static String escapeLoneSurrogates(String text) {
        return LONE_SURROGATE
                .matcher(text)
                .replaceAll(half -> Matcher.quoteReplacement(
                        String.format("\\u%04x", (int) half.group().charAt(0))));
    }

    private static final class Indented extends ObjectWriteContext.Base {
        @Override
        public PrettyPrinter getPrettyPrinter() {
            DefaultIndenter lines = new DefaultIndenter("  ", "\n");
            return new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines);
        }

        @Override
        public boolean hasPrettyPrinter() {
            return true;
        }
    }
}

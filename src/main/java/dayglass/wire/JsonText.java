package dayglass.wire;

import dayglass.base.Fault;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.core.exc.UnexpectedEndOfInputException;
import tools.jackson.core.json.JsonFactory;

/**
 * Text into values: strict JSON in UTF-8 (RFC 8259; a byte order mark before it is let pass, as section 8.1 allows),
 * of at most {@link #MOST_BYTES}. Whatever cannot be read is one fault at the empty pointer that names line and column.
 */
public final class JsonText {
    /** The longest text: 2 MiB. */
    public static final int MOST_BYTES = 2 * 1024 * 1024;

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    /** Any escape, so that an escaped backslash is passed over whole; group 1 is a surrogate's number. */
    private static final Pattern SURROGATE_ESCAPE = Pattern.compile("\\\\(?:u([dD][89a-fA-F][0-9a-fA-F]{2})|.)");

    /** The size of the text is the one limit: inside it nothing may be too long or too deep for the parser. */
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(Integer.MAX_VALUE)
                    .maxNumberLength(Integer.MAX_VALUE)
                    .maxStringLength(Integer.MAX_VALUE)
                    .maxNameLength(Integer.MAX_VALUE)
                    .build())
            .disable(TokenStreamFactory.Feature.CANONICALIZE_PROPERTY_NAMES)
            .disable(TokenStreamFactory.Feature.INTERN_PROPERTY_NAMES)
            .disable(TokenStreamFactory.Feature.FAIL_ON_SYMBOL_HASH_OVERFLOW)
            .build();

    private JsonText() {}

    /** The value that the bytes say, or why they are no JSON. */
    public static Checked<Json> parse(byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            return Checked.faulty(new Fault("", tooLong()));
        }
        CharBuffer characters = CharBuffer.allocate(bytes.length);
        ByteBuffer input = ByteBuffer.wrap(bytes);
        CoderResult result = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(input, characters, true);
        characters.flip();
        if (result.isError()) {
            return Checked.faulty(notJson(
                    lineAtEnd(characters),
                    columnAtEnd(characters),
                    "the bytes there are not UTF-8: save the text in UTF-8 and send it again"));
        }
        return parse(characters.toString());
    }

    /** What is said of a text over the limit. */
    public static String tooLong() {
        return "the request is longer than 2 MiB (" + MOST_BYTES
                + " bytes): leave out options and days that cannot matter, or split it";
    }

    /** The value that a text says, however long it is; for texts of our own making. */
    public static Checked<Json> parse(String text) {
        try (JsonParser parser = parser(text)) {
            return new Checked.Good<>(read(parser));
        } catch (UnexpectedEndOfInputException e) {
            return Checked.faulty(notJson(e, "the text ends before its JSON does: close what is open"));
        } catch (JacksonException e) {
            return Checked.faulty(notJson(e, reason(e) + ": mend the text there"));
        }
    }

    /**
     * Turns the escape of each surrogate into the character itself: the parser refuses a member's name that holds half
     * an escaped pair, which is good JSON; whoever reads the name judges it.
     */
    private static String withHalfPairsSpelt(String text) {
        return SURROGATE_ESCAPE
                .matcher(text)
                .replaceAll(found -> Matcher.quoteReplacement(
                        found.group(1) == null
                                ? found.group()
                                : String.valueOf((char) Integer.parseInt(found.group(1), 16))));
    }

    /** A parser of a text known to be JSON. */
    static JsonParser parser(byte[] text) {
        return parser(new String(text, StandardCharsets.UTF_8));
    }

    private static JsonParser parser(String text) {
        boolean marked = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK;
        return FACTORY.createParser(ObjectReadContext.empty(), withHalfPairsSpelt(marked ? text.substring(1) : text));
    }

    /** Reads the one value; a stack of open containers stands in for recursion, so that depth costs no call stack. */
    private static Json read(JsonParser parser) {
        Deque<Open> open = new ArrayDeque<>();
        JsonToken token = parser.nextToken();
        if (token == null) {
            throw new UnexpectedEndOfInputException(parser, JsonToken.NOT_AVAILABLE, "no value");
        }
        while (true) {
            if (token == JsonToken.START_OBJECT || token == JsonToken.START_ARRAY) {
                open.push(new Open(token == JsonToken.START_OBJECT));
            } else if (token == JsonToken.PROPERTY_NAME) {
                open.element().name = parser.currentName();
            } else {
                boolean closes = token == JsonToken.END_OBJECT || token == JsonToken.END_ARRAY;
                Json value = closes ? open.pop().close() : scalar(parser, token);
                if (open.isEmpty()) {
                    requireEnd(parser);
                    return value;
                }
                open.element().add(value);
            }
            token = Objects.requireNonNull(parser.nextToken(), "the parser reports an early end itself");
        }
    }

    private static void requireEnd(JsonParser parser) {
        if (parser.nextToken() != null) {
            throw new TrailingText(parser);
        }
    }

    private static Json scalar(JsonParser parser, JsonToken token) {
        return switch (token) {
            case VALUE_STRING -> new Json.Text(parser.getString());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Json.Num(parser.getString());
            case VALUE_TRUE -> new Json.Bool(true);
            case VALUE_FALSE -> new Json.Bool(false);
            case VALUE_NULL -> new Json.Null();
            default -> throw new IllegalStateException("no JSON token of this kind is known: " + token);
        };
    }

    private static Fault notJson(JacksonException e, String reason) {
        return e.getLocation() == null
                ? new Fault("", "this is not JSON: " + reason)
                : notJson(e.getLocation().getLineNr(), e.getLocation().getColumnNr(), reason);
    }

    private static Fault notJson(int line, int column, String reason) {
        return new Fault("", "this is not JSON: line " + line + ", column " + column + ": " + reason);
    }

    /** The parser's sentence without what it says about itself. */
    private static String reason(JacksonException e) {
        String message = e.getOriginalMessage();
        for (String tail : List.of("\n", " (start marker", " (for ", "; maximum")) {
            int at = message.indexOf(tail);
            message = at < 0 ? message : message.substring(0, at);
        }
        return message.length() > 200 ? message.substring(0, 200) + "…" : message;
    }

    private static int lineAtEnd(CharSequence text) {
        return 1 + (int) text.chars().filter(c -> c == '\n').count();
    }

    private static int columnAtEnd(CharSequence text) {
        return text.length() - text.toString().lastIndexOf('\n');
    }

    /** Something follows the one value. */
    private static final class TrailingText extends JacksonException {
        private static final long serialVersionUID = 1L;

        TrailingText(JsonParser parser) {
            super("something follows the end of the JSON value", parser.currentTokenLocation(), null);
        }
    }

    /** A container whose end has not come yet. */
    private static final class Open {
        private final Json.Members members = Json.object();
        private final List<Json> entries = new ArrayList<>();
        private final boolean object;
        private String name = "";

        Open(boolean object) {
            this.object = object;
        }

        void add(Json value) {
            if (object) {
                members.put(name, value);
            } else {
                entries.add(value);
            }
        }

        Json close() {
            return object ? members.build() : new Json.Arr(entries);
        }
    }
}

package dayglass.storage.house;

import static dayglass.storage.schema.Tables.KEYED_ANSWER;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.house.KeyedAnswers;
import dayglass.storage.Database;
import dayglass.storage.schema.tables.records.KeyedAnswerRecord;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.JsonPrint;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.jooq.DSLContext;

/**
 * Keyed answers as rows. Looking the key up, the work and keeping its answer are one transaction of the only connection
 * that writes, so that the second of two at once waits for the first and finds its answer.
 */
public final class JooqKeyedAnswers implements KeyedAnswers {
    private static final long KEPT_SECONDS = Duration.ofDays(LEAST_DAYS_KEPT).toSeconds();
    private static final int MOST_STATUS = 599;

    private final Database database;
    private final Clock clock;

    public JooqKeyedAnswers(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    @Override
    public Outcome<Answer> once(Request request, Supplier<Outcome<Answer>> work) {
        return database.writing(sql -> {
            long now = clock.instant().getEpochSecond();
            sql.deleteFrom(KEYED_ANSWER)
                    .where(KEYED_ANSWER.ANSWERED_AT.lt(now - KEPT_SECONDS))
                    .execute();
            KeyedAnswerRecord kept = sql.selectFrom(KEYED_ANSWER)
                    .where(KEYED_ANSWER.IDEMPOTENCY_KEY.eq(request.key()))
                    .fetchOne();
            return kept == null ? work.get().map(answer -> keep(sql, request, now, answer)) : again(request, kept);
        });
    }

    private static Outcome<Answer> again(Request request, KeyedAnswerRecord kept) {
        return kept.getRequestSha256().equals(request.sha256())
                ? Outcome.done(read(kept.getAnswerJson()))
                : Outcome.refused(
                        Problem.Code.CANNOT_BE_DONE,
                        "The key " + request.key() + " was sent before with another request: give each request a key of"
                                + " its own.");
    }

    private static Answer keep(DSLContext sql, Request request, long now, Answer answer) {
        Json.Members headers = Json.object();
        new TreeMap<>(answer.headers()).forEach(headers::put);
        String json = JsonPrint.pretty(Json.object()
                .put("status", answer.status())
                .put("headers", headers.build())
                .put("body", answer.body())
                .build());
        sql.insertInto(KEYED_ANSWER)
                .set(KEYED_ANSWER.IDEMPOTENCY_KEY, request.key())
                .set(KEYED_ANSWER.REQUEST_SHA256, request.sha256())
                .set(KEYED_ANSWER.ANSWERED_AT, now)
                .set(KEYED_ANSWER.ANSWER_JSON, json)
                .execute();
        return answer;
    }

    private static Answer read(String json) {
        Reader<Answer> reader = Fields.object(fields -> {
            Read<Integer> status = fields.required("status", Readers.whole(0, MOST_STATUS));
            Read<Map<String, String>> headers = fields.required("headers", headers());
            Read<String> body = fields.required("body", Readers.anyText());
            return fields.build(() -> new Answer(status.get(), headers.get(), body.get()));
        });
        return reader.read(json.getBytes(StandardCharsets.UTF_8)).fold(answer -> answer, faults -> {
            throw new IllegalStateException("an answer was kept in another form: " + faults);
        });
    }

    private static Reader<Map<String, String>> headers() {
        return (json, place) -> {
            Map<String, String> headers = new LinkedHashMap<>();
            if (json instanceof Json.Obj object) {
                object.members().forEach((name, value) -> headers.put(name, ((Json.Text) value).value()));
            }
            return Read.good(headers);
        };
    }
}

package dayglass.web.api.books;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dayglass.support.Reply;
import dayglass.support.Served;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** How long what an entry pays for may be; invented figures. */
class EntryServiceTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    /** A mistyped year would become an entry a week for thousands of years, and hold up everybody else. */
    @Test
    @Timeout(60)
    void aMistypedYearIsRefusedByItsField() {
        try (Served served = Served.in(folder)) {
            long job = served.post("/api/jobs/import", Served.example("01-three-day-week"))
                    .id();
            Reply refused = post(served, job, "0027-04-05", "2027-04-11");
            assertEquals(400, refused.status(), refused.text());
            assertEquals("/serviceTo", refused.json().at("/faults/0/pointer").asString());
            assertEquals(201, post(served, job, "2027-04-05", "2047-04-05").status(), "twenty years may be");
        }
    }

    private static Reply post(Served served, long job, String from, String to) {
        return served.post(
                "/api/jobs/" + job + "/book-entries",
                "{\"kind\": \"commitment\", \"date\": \"2027-04-05\", \"serviceFrom\": \"" + from
                        + "\", \"serviceTo\": \"" + to
                        + "\", \"description\": \"glass\", \"net\": \"20000.00\", \"overPeriods\": true}");
    }
}

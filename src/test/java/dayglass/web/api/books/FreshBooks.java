package dayglass.web.api.books;

import dayglass.support.FreshServer;
import dayglass.support.Served;
import org.junit.jupiter.api.BeforeEach;

/** A server on an empty database and the books of a job in it, anew for each test. */
abstract class FreshBooks extends FreshServer {
    /** Its address. */
    protected String job = "";

    @BeforeEach
    void openBooks() {
        job = "/api/jobs/"
                + served.post("/api/jobs/import", Served.example("01-three-day-week"))
                        .id();
    }
}

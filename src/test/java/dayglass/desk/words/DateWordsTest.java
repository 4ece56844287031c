package dayglass.desk.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.cost.Schedule;
import java.time.LocalDate;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Weeks begin on Monday (ISO 8601); the words themselves are common practice on the phone. */
class DateWordsTest {
    /** A Wednesday. */
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 31);

    private static String read(String words) {
        return DateWords.read(words, TODAY)
                .fold(
                        schedule -> schedule.spans().stream()
                                .map(DateWordsTest::said)
                                .collect(Collectors.joining(" ")),
                        problem -> problem.faults().get(0).message());
    }

    private static String said(Schedule.Span span) {
        return span.use().word() + " " + span.dates().from() + "/"
                + span.dates().lastDay();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    today                                | shoot 2027-03-31/2027-03-31
                    tomorrow                             | shoot 2027-04-01/2027-04-01
                    fri                                  | shoot 2027-04-02/2027-04-02
                    wed                                  | shoot 2027-03-31/2027-03-31
                    next wed                             | shoot 2027-04-07/2027-04-07
                    tue to next fri                      | shoot 2027-04-06/2027-04-16
                    tue to fri                           | shoot 2027-04-06/2027-04-09
                    Tuesday - Friday                     | shoot 2027-04-06/2027-04-09
                    3 days from 12 apr                   | shoot 2027-04-12/2027-04-14
                    3 days                               | shoot 2027-03-31/2027-04-02
                    a week from mon                      | shoot 2027-04-05/2027-04-11
                    2 weeks from april 5                 | shoot 2027-04-05/2027-04-18
                    from fri for 3 days                  | shoot 2027-04-02/2027-04-04
                    12 to 16 apr                         | shoot 2027-04-12/2027-04-16
                    12-16 apr                            | shoot 2027-04-12/2027-04-16
                    12th–16th april 2028                 | shoot 2028-04-12/2028-04-16
                    28 apr to 3 may                      | shoot 2027-04-28/2027-05-03
                    30 dec to 2 jan                      | shoot 2027-12-30/2028-01-02
                    1 mar                                | shoot 2028-03-01/2028-03-01
                    29 feb                               | shoot 2028-02-29/2028-02-29
                    2027-04-12 to 2027-04-16             | shoot 2027-04-12/2027-04-16
                    until sat                            | shoot 2027-03-31/2027-04-03
                    this week                            | shoot 2027-03-31/2027-04-04
                    next week                            | shoot 2027-04-05/2027-04-11
                    prep mon, shoot tue to fri, wrap sat | prep 2027-04-05/2027-04-05 shoot 2027-04-06/2027-04-09 wrap 2027-04-10/2027-04-10
                    next week, dark weekends             | shoot 2027-04-05/2027-04-09
                    mon to fri, dark wed                 | shoot 2027-04-05/2027-04-06 shoot 2027-04-08/2027-04-09
                    """)
    void wordsAreDays(String words, String days) {
        assertEquals(days, read(words));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "", "soon", "fri to", "31 feb", "mon to fri,", "3 days of rain", "12 apr to 3 apr 2027", "0 days",
                "2000 days", "dark mon", "mon, mon", "mon, dark mon", "2027-13-01", "next", "week", "12/4"
            })
    void whatCannotBeReadIsSaid(String words) {
        String said = DateWords.read(words, TODAY)
                .fold(
                        schedule -> "read as " + schedule,
                        problem -> problem.faults().get(0).pointer());
        assertEquals("/dates", said);
    }

    @ParameterizedTest
    @ValueSource(strings = {"mon blah", "fri to never"})
    void itIsSaidFromWhereOn(String words) {
        assertTrue(read(words).contains("cannot be read"), read(words));
    }
}

package dayglass.inventory.condition;

/** How bad a finding is. No scale is common to the trade, so that each grade says what it means. */
public enum Severity {
    NONE(0, "nothing that matters"),
    SLIGHT(1, "slight: no picture shows it"),
    VISIBLE(2, "visible at some stops or in hard light: tell whoever takes it"),
    SPOILS(3, "spoils pictures or work: not to be promised"),
    UNUSABLE(4, "unusable or unsafe");

    /** From here on a unit is not healthy. */
    public static final Severity NOT_HEALTHY_FROM = SPOILS;

    public static final int MOST = 4;

    private final int grade;
    private final String words;

    Severity(int grade, String words) {
        this.grade = grade;
        this.words = words;
    }

    /** From 0 to {@link #MOST}. */
    public int grade() {
        return grade;
    }

    public String words() {
        return words;
    }

    /**
     * The severity of a grade.
     *
     * @throws IllegalArgumentException where there is no such grade
     */
    public static Severity of(int grade) {
        for (Severity severity : values()) {
            if (severity.grade == grade) {
                return severity;
            }
        }
        throw new IllegalArgumentException("no severity has the grade " + grade);
    }
}

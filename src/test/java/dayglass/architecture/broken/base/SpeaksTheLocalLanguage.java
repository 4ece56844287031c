package dayglass.architecture.broken.base;

/** Breaks a rule of the house on purpose, or is what another class breaks it with. */
public final class SpeaksTheLocalLanguage {
    @SuppressWarnings("StringCaseLocaleUsage") // the breach to be caught
    static String loud(String text) {
        return text.toUpperCase();
    }
}

package dayglass.house;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a person is in the house. */
public enum Role {
    OWNER,
    CLERK,
    ACCOUNTANT;

    /** As it is written: {@code clerk}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Role> of(String word) {
        return Arrays.stream(values()).filter(role -> role.word().equals(word)).findFirst();
    }
}

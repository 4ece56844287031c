package dayglass.optics;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * What one check found.
 *
 * @param check its name: {@code close focus}
 * @param margin what is to spare, negative where it lacks; in millimetres, stops or grams, as the check says
 * @param why one plain sentence
 */
public record Finding(String check, Verdict verdict, Optional<BigDecimal> margin, String why) {}

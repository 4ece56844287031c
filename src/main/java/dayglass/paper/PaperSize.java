package dayglass.paper;

import java.util.Arrays;
import java.util.Optional;

/** A sheet that a printer takes; ISO 216 for A4, ANSI/ASME Y14.1 for Letter (A). */
public enum PaperSize {
    A4("A4", 210, 297),
    LETTER("Letter", 215.9, 279.4);

    private final String word;
    private final double widthMm;
    private final double heightMm;

    PaperSize(String word, double widthMm, double heightMm) {
        this.word = word;
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    public String word() {
        return word;
    }

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }

    public static Optional<PaperSize> of(String word) {
        return Arrays.stream(values())
                .filter(paper -> paper.word.equalsIgnoreCase(word))
                .findFirst();
    }
}

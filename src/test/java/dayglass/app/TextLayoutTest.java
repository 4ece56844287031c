package dayglass.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextLayoutTest {
    @Test
    void noLineIsWiderThanTheTableHoweverLongItsWords() {
        for (String word : List.of("x".repeat(200), "長".repeat(200), "😀".repeat(200), "a b ".repeat(50), "")) {
            for (String amount : List.of("", "1.00", "123456789012345678901.00" + " ".repeat(16))) {
                String text = new TextLayout()
                        .row(6, word, amount)
                        .sentence(6, word)
                        .heading(word, amount)
                        .toString();
                assertTrue(text.lines().allMatch(line -> TextLayout.columns(line) <= TextLayout.WIDTH), text);
            }
        }
    }

    @Test
    void whatIsWrappedLosesNothing() {
        String word = "長x".repeat(100);
        String text = new TextLayout().sentence(2, word).toString();
        assertEquals(word, text.replaceAll("\\s", ""));
    }

    @Test
    void anAmountEndsAtTheRightEdgeOfItsLabelsLastLine() {
        String text =
                new TextLayout().row(2, "label ".repeat(30).strip(), "1.00").toString();
        List<String> lines = text.lines().toList();
        assertEquals(3, lines.size());
        assertTrue(lines.get(2).endsWith(" 1.00"));
        assertEquals(TextLayout.WIDTH, lines.get(2).length());
    }
}

package dayglass.books;

/** What a line stands for. */
public enum LineKind {
    RENTAL("rental"),
    PURCHASE("purchase"),
    /** Moves no money: it is weighed and never payable. */
    OWNED("owned");

    private final String word;

    LineKind(String word) {
        this.word = word;
    }

    /** The word on screen and in files. */
    public String word() {
        return word;
    }
}

package dayglass.books;

/**
 * What an amount of a payable line is for; every amount of one purpose stands in one column.
 *
 * @param name of the extra or add-on; empty for all other purposes
 */
public record AmountColumn(Purpose purpose, String name) {
    /** In the order of the columns. */
    public enum Purpose {
        HIRE("hire", true),
        DISCOUNT("discount", true),
        RAISED_TO_MINIMUM("raised to minimum", true),
        TRIP("trip", true),
        PRICE("price", true),
        EXTRA("extra", true),
        PURCHASE_TAX("purchase tax", false),
        ADD_ON("add-on", false);

        private final String word;
        private final boolean net;

        Purpose(String word, boolean net) {
            this.word = word;
            this.net = net;
        }

        /** Counts towards the net amount; what does not is added to it. */
        public boolean isNet() {
            return net;
        }

        /** Each name has a column of its own. */
        boolean isNamed() {
            return this == EXTRA || this == ADD_ON;
        }
    }

    public AmountColumn {
        if (purpose.isNamed() == name.isEmpty()) {
            throw new IllegalArgumentException("only extras and add-ons have names, and all of them do: " + purpose);
        }
    }

    static AmountColumn of(Purpose purpose) {
        return new AmountColumn(purpose, "");
    }

    /** The heading of the column; a name stands behind its purpose, so no name can pass for another column. */
    public String heading() {
        return purpose.isNamed() ? purpose.word + ": " + name : purpose.word;
    }
}

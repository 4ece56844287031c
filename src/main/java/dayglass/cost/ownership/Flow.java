package dayglass.cost.ownership;

/** What money moves for, in the order in which a month's lines stand. */
public enum Flow {
    PRICE("price"),
    TAX("tax on the price"),
    EXTRAS("extras"),
    LOAN_PAID_OUT("loan paid out"),
    INSURANCE("insurance"),
    STORAGE("storage"),
    SERVICE("service by months"),
    SERVICE_BY_DAYS("service by days out"),
    RUNNING("own use"),
    LOAN_PAYMENTS("loan payments"),
    LETTING("letting, owner's share"),
    WEAR("wear by letting"),
    RENT_SAVED("rent not paid"),
    RESALE("resale"),
    SELLING_COST("selling cost"),
    LOAN_SETTLED("rest of the loan");

    private final String words;

    Flow(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}

package dayglass.wire;

/** To whom faults are told, since one reads JSON and the other fills in a form. */
public enum Listener {
    /** Writes JSON: is told of members, quotes and kinds of values. */
    PROGRAM,
    /** Fills in the fields of a form, each of which holds text: is told what to type. */
    PERSON
}

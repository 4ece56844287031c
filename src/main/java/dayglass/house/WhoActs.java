package dayglass.house;

/**
 * Who stands behind what is being done. Whoever lets a person in says so for the length of a piece of work on its
 * thread; whatever keeps a record asks here, so that no room can forget to pass the name on.
 */
public final class WhoActs {
    private final ThreadLocal<Person.Id> current;

    /** @param otherwise who it is where nobody said so: on one person's machine, that person */
    public WhoActs(Person.Id otherwise) {
        this.current = ThreadLocal.withInitial(() -> otherwise);
    }

    public Person.Id now() {
        return current.get();
    }

    /** From here to {@link #end} the thread works in the name of the person. */
    public void begin(Person.Id person) {
        current.set(person);
    }

    public void end() {
        current.remove();
    }
}

package wainbook.process.plan;

/**
 * One thing that can make the vehicle live: a pack, a charging inlet, the 24 V supply of the contactor coils, the wheels.
 *
 * @param howOpened how it is opened, on all poles
 * @param lockedAt where its lock or blank goes
 * @param howShown how it shows that it is open
 */
public record Source(String code, String name, String howOpened, String lockedAt, String howShown) {

    public Source {
        if (code.isBlank() || name.isBlank()) {
            throw new IllegalArgumentException("a source has a code and a name");
        }
    }
}

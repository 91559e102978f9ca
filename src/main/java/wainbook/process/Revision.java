package wainbook.process;

/** The count of releases of one thing, from 1. */
final class Revision {

    private Revision() {}

    static void checked(int revision) {
        if (revision < 1) {
            throw new IllegalArgumentException("revisions count from 1, not " + revision);
        }
    }
}

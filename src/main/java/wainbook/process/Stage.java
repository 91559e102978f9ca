package wainbook.process;

/**
 * A step of the process.
 *
 * @param number its place in the works' own numbering; 0 is before the line begins
 */
public record Stage(String code, int number, String title) {

    public Stage {
        Code.checked("a stage", code);
        Code.titled("a stage", title);
        if (number < 0) {
            throw new IllegalArgumentException("a stage's number is 0 or more, not " + number);
        }
    }
}

package wainbook.process;

/** A short name that stays the same for good and is written on paper, labels and in addresses. */
public final class Code {

    private static final String FORM = "[A-Za-z0-9][A-Za-z0-9._-]{0,39}";

    private Code() {}

    public static String checked(String what, String code) {
        if (code == null || !code.matches(FORM)) {
            throw new IllegalArgumentException(
                    what + " is letters, digits, dots, dashes and underscores, at most 40; not: " + code);
        }
        return code;
    }

    public static String titled(String what, String title) {
        if (title == null || title.isBlank() || title.length() > 200) {
            throw new IllegalArgumentException(what + " has a title of 1 to 200 characters, not: " + title);
        }
        return title;
    }
}

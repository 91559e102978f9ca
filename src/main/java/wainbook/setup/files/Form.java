package wainbook.setup.files;

import java.util.List;

/** The form that a number, code or name must have before it can stand on record. */
record Form(List<Fault> faults) {

    private static final String CODE = "[A-Za-z0-9][A-Za-z0-9._-]{0,39}";
    private static final int LONGEST_NAME = 80;
    private static final int LONGEST_TITLE = 200;

    /** Beyond a hundred years a day is a slip of the pen. */
    private static final int FARTHEST_DAY = 36_525;

    void code(String code, Place place) {
        if (!code.matches(CODE)) {
            faults.add(Fault.of(
                    place, "wrongValue", code, "letters, digits, dots, dashes and underscores, at most 40 of them"));
        }
    }

    void name(String name, Place place) {
        upTo(LONGEST_NAME, name, place);
    }

    void title(String title, Place place) {
        upTo(LONGEST_TITLE, title, place);
    }

    void day(int day, Place place) {
        if (Math.abs(day) > FARTHEST_DAY) {
            faults.add(Fault.of(
                    place, "wrongValue", String.valueOf(day), "a day from -" + FARTHEST_DAY + " to " + FARTHEST_DAY));
        }
    }

    private void upTo(int longest, String text, Place place) {
        if (text.isBlank() || text.length() > longest) {
            faults.add(Fault.of(place, "wrongValue", text, "1 to " + longest + " characters"));
        }
    }
}

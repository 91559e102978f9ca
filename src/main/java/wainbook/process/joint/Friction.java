package wainbook.process.joint;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Between what the coefficient of friction of a joint lies, at thread and head alike. A range that is stated counts; else the
 * classes B (0.08 to 0.16) and C (0.14 to 0.24) of VDI 2230-1 table A5, from memory, by the words used.
 *
 * @param stated whether the joint itself says it
 */
public record Friction(double low, double high, boolean stated) {

    private static final Pattern STATED = Pattern.compile("[µμ]\\s*(0[.]\\d{1,3})\\s*(?:-|–|to)\\s*(0[.]\\d{1,3})");
    private static final Pattern LUBRICATED = Pattern.compile("\\b(oil|oiled|wax|waxed|grease|greased|lubricated)\\b");
    private static final Pattern DRY = Pattern.compile("\\bdry\\b");

    private static final double LUBRICATED_LOW = 0.08;
    private static final double LUBRICATED_HIGH = 0.16;
    private static final double DRY_LOW = 0.14;
    private static final double DRY_HIGH = 0.24;

    /** What says nothing of its lubrication may be either. */
    static Friction of(String lubrication) {
        Matcher stated = STATED.matcher(lubrication);
        if (stated.find()) {
            double one = Double.parseDouble(stated.group(1));
            double other = Double.parseDouble(stated.group(2));
            if (one > 0 && one <= other) {
                return new Friction(one, other, true);
            }
        }
        String words = lubrication.toLowerCase(Locale.ROOT);
        boolean lubricated = LUBRICATED.matcher(words).find();
        boolean dry = DRY.matcher(words).find();
        return new Friction(
                dry && !lubricated ? DRY_LOW : LUBRICATED_LOW, lubricated && !dry ? LUBRICATED_HIGH : DRY_HIGH, false);
    }
}

package wainbook.trace.campaign.scope;

import java.math.BigInteger;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wainbook.trace.Mention;
import wainbook.trace.campaign.CampaignSaying.Term;

/** Which codes a term means: one, whatever begins so, or a range in which numbers count as numbers. */
public final class Codes {

    private static final Pattern PIECE = Pattern.compile("\\d+|\\D+");

    private Codes() {}

    /** What every code that fits begins with. */
    public static String beginning(Term term) {
        String code = code(term);
        return term.to().map(to -> common(code, Mention.code(to))).orElse(code);
    }

    /** @param code in capitals and without blanks, as records are searched by it */
    public static boolean fits(Term term, String code) {
        String from = code(term);
        Optional<String> to = term.to().map(Mention::code);
        if (to.isPresent()) {
            return compare(from, code) <= 0 && compare(code, to.get()) <= 0;
        }
        return whole(term) ? code.equals(from) : code.startsWith(from);
    }

    private static boolean whole(Term term) {
        return !term.code().strip().endsWith("*");
    }

    private static String code(Term term) {
        String code = Mention.code(term.code());
        return whole(term) ? code : code.substring(0, code.length() - 1);
    }

    /** Up to where numbers may differ: L-9 to L-12 begin with L- and not with a digit. */
    private static String common(String one, String other) {
        int length = 0;
        while (length < Math.min(one.length(), other.length())
                && one.charAt(length) == other.charAt(length)
                && !Character.isDigit(one.charAt(length))) {
            length++;
        }
        return one.substring(0, length);
    }

    /** As people count: L-9 before L-10. */
    static int compare(String one, String other) {
        Matcher left = PIECE.matcher(one);
        Matcher right = PIECE.matcher(other);
        while (true) {
            boolean more = left.find();
            if (more != right.find()) {
                return more ? 1 : -1;
            } else if (!more) {
                return 0;
            }
            int order = piece(left.group(), right.group());
            if (order != 0) {
                return order;
            }
        }
    }

    private static int piece(String one, String other) {
        if (Character.isDigit(one.charAt(0)) && Character.isDigit(other.charAt(0))) {
            return new BigInteger(one).compareTo(new BigInteger(other));
        }
        return one.compareTo(other);
    }
}

package wainbook.waste.note;

import java.util.regex.Pattern;

/**
 * The code of a consignment note in England since 1 April 2016: six letters or digits of the producer's name, a stroke, and five of
 * one's choice with a letter after them if wanted (trade notices of 2016, second-hand account).
 */
public final class NoteCode {

    private static final Pattern ENGLAND = Pattern.compile("[A-Z0-9]{6}/[A-Z0-9]{5}[A-Z]?");

    private NoteCode() {}

    public static boolean fits(String code) {
        return ENGLAND.matcher(code).matches();
    }
}

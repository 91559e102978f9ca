package wainbook.rehearsal.vehicle;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wainbook.rehearsal.chance.Dice;

/** A form that serial numbers have, as check sheets write it: letters, figures, classes such as {@code [0-9]{8}}. */
record SerialForm(String form) {

    private static final Pattern PIECE = Pattern.compile("(?:\\[(.)-(.)]|\\\\?(.))(?:\\{(\\d+)})?");

    static SerialForm of(String form) {
        return new SerialForm(form);
    }

    /** A text of this form. */
    String text(Dice dice) {
        var text = new StringBuilder();
        Matcher piece = PIECE.matcher(form);
        while (piece.find()) {
            int times = piece.group(4) == null ? 1 : Integer.parseInt(piece.group(4));
            for (int i = 0; i < times; i++) {
                text.append(
                        piece.group(3) == null
                                ? (char) dice.between(
                                        piece.group(1).charAt(0), piece.group(2).charAt(0))
                                : piece.group(3).charAt(0));
            }
        }
        if (!text.toString().matches(form)) {
            throw new IllegalArgumentException("no text can be made of the form " + form);
        }
        return text.toString();
    }
}

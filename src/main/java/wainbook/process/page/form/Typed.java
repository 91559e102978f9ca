package wainbook.process.page.form;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import wainbook.page.Filled;

/**
 * What was typed into a form, read field by field. A fault is noted at its field and reading goes on with a stand-in, so that
 * one answer names all faults; what was read counts only if there was none.
 */
public final class Typed {

    private static final Pattern CODE = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,39}");
    private static final Pattern WHOLE = Pattern.compile("\\d{1,9}");
    private static final Pattern DECIMAL = Pattern.compile("-?\\d{1,12}([.]\\d{1,9})?");
    private static final String STAND_IN = "x";
    private static final int LONGEST_TITLE = 200;
    private static final int LONGEST_TEXT = 4000;

    private Filled filled;

    public Typed(Filled filled) {
        this.filled = filled;
    }

    public Filled filled() {
        return filled;
    }

    public void wrong(String field, String key, Object... arguments) {
        filled = filled.wrong(field, key, arguments);
    }

    Optional<String> maybe(String field) {
        return Optional.of(filled.value(field)).filter(text -> !text.isEmpty()).filter(text -> {
            boolean fits = text.length() <= LONGEST_TEXT;
            if (!fits) {
                wrong(field, "process.fieldLong", LONGEST_TEXT);
            }
            return fits;
        });
    }

    public String text(String field) {
        return demand(field, maybe(field), text -> text.length() <= LONGEST_TITLE, "process.fieldTitle");
    }

    public String code(String field) {
        return demand(field, maybe(field), text -> CODE.matcher(text).matches(), "process.fieldCode");
    }

    /** A code from a list that was shown. */
    String chosen(String field) {
        return demand(field, maybe(field), text -> CODE.matcher(text).matches(), "process.fieldChoice");
    }

    Optional<String> maybeCode(String field) {
        return maybe(field).map(text -> code(field));
    }

    private String demand(String field, Optional<String> text, Predicate<String> fits, String fault) {
        if (text.filter(fits).isEmpty()) {
            wrong(field, fault);
            return STAND_IN;
        }
        return text.get();
    }

    int whole(String field, int least, int most) {
        String text = filled.value(field);
        if (WHOLE.matcher(text).matches()) {
            int number = Integer.parseInt(text);
            if (number >= least && number <= most) {
                return number;
            }
        }
        wrong(field, "process.fieldWhole", least, most);
        return least;
    }

    Optional<Integer> maybeWhole(String field, int least, int most) {
        return maybe(field).map(text -> whole(field, least, most));
    }

    Optional<BigDecimal> maybeDecimal(String field) {
        return maybe(field).map(text -> decimal(field, text));
    }

    BigDecimal decimal(String field) {
        return decimal(field, filled.value(field));
    }

    private BigDecimal decimal(String field, String text) {
        String pointed = text.replace(',', '.');
        if (DECIMAL.matcher(pointed).matches()) {
            return new BigDecimal(pointed);
        }
        wrong(field, "process.fieldDecimal");
        return BigDecimal.ONE;
    }

    boolean tick(String field) {
        return filled.value(field).equals("yes");
    }

    <E extends Enum<E>> E one(String field, Class<E> type) {
        return maybeOne(field, type).orElseGet(() -> {
            wrong(field, "process.fieldChoice");
            return type.getEnumConstants()[0];
        });
    }

    <E extends Enum<E>> Optional<E> maybeOne(String field, Class<E> type) {
        return Arrays.stream(type.getEnumConstants())
                .filter(constant -> constant.name().equals(filled.value(field)))
                .findFirst();
    }

    /** One a line, no two alike. */
    List<String> lines(String field) {
        return filled.value(field)
                .lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .distinct()
                .toList();
    }

    List<String> linesDemanded(String field) {
        List<String> lines = lines(field);
        if (lines.isEmpty()) {
            wrong(field, "process.fieldLines");
            return List.of(STAND_IN);
        }
        return lines;
    }

    List<String> codes(String field) {
        List<String> codes = Arrays.stream(filled.value(field).split("[\\s,;]+"))
                .filter(word -> !word.isEmpty())
                .distinct()
                .toList();
        if (codes.stream().anyMatch(word -> !CODE.matcher(word).matches())) {
            wrong(field, "process.fieldCodes");
            return List.of();
        }
        return codes;
    }
}

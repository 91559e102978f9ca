package wainbook.process.stream;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * What a check item that weighs or dips lets come out of the vehicle.
 *
 * @param name what comes out, in a word or two; absent: the item's own title
 * @param code its entry in the List of Waste, with or without blanks and asterisk
 * @param fate what becomes of it unless somebody decides otherwise; absent: recycled
 * @param density for what is dipped in litres
 */
public record MaterialStream(Optional<String> name, String code, Optional<Fate> fate, Optional<Density> density) {

    private static final int GRAMS = 3;
    public static final int LONGEST_NAME = 80;

    public MaterialStream {
        if (!WasteCode.looksLikeOne(code)) {
            throw new IllegalArgumentException(
                    "a code of the List of Waste is six digits, such as 16 01 07*; not: " + code);
        }
        name.filter(text -> text.isBlank() || text.length() > LONGEST_NAME).ifPresent(text -> {
            throw new IllegalArgumentException("what comes out is named in 1 to " + LONGEST_NAME + " characters");
        });
    }

    /** The mass of a quantity in kilograms, to the gram; empty where the unit cannot be turned into one. */
    public Optional<BigDecimal> massKg(BigDecimal quantity, String unit) {
        return switch (unit) {
            case "kg" -> Optional.of(quantity);
            case "l" -> density.map(known -> quantity.multiply(known.kgPerL()).setScale(GRAMS, RoundingMode.HALF_UP));
            default -> Optional.empty();
        };
    }

    public Fate becomes() {
        return fate.orElse(Fate.RECYCLE);
    }
}

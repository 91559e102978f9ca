package wainbook.engineering.measurement;

import java.util.Locale;
import wainbook.engineering.Step;

/** The check systems of ISO/IEC 7064 that serial numbers use. */
public enum Scheme {
    MOD11_2("MOD11-2", "0123456789", "p = 2 · (p + digit) mod 11; check = (12 − p) mod 11, 10 is X") {
        @Override
        int remainder(String text) {
            return text.chars().map(alphabet()::indexOf).reduce(0, (p, digit) -> (p + digit) * 2 % 11);
        }

        @Override
        String check(String text) {
            return "0123456789X".charAt((12 - remainder(text)) % 11) + "";
        }
    },
    MOD37_36(
            "MOD37-36",
            "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ",
            "q = (p + value) mod 36, 0 is 36; p = 2 · q mod 37; check = (37 − p) mod 36") {
        @Override
        int remainder(String text) {
            return text.chars().map(alphabet()::indexOf).reduce(36, (p, value) -> {
                int q = (p + value) % 36;
                return (q == 0 ? 36 : q) * 2 % 37;
            });
        }

        @Override
        String check(String text) {
            return String.valueOf(alphabet().charAt((37 - remainder(text)) % 36));
        }
    },
    MOD97_10("MOD97-10", "0123456789", "p = 10 · (p + digit) mod 97; check = 98 − 10 · p mod 97, two digits") {
        @Override
        int remainder(String text) {
            return text.chars().map(alphabet()::indexOf).reduce(0, (p, digit) -> (p + digit) * 10 % 97);
        }

        @Override
        String check(String text) {
            return String.format(Locale.ROOT, "%02d", (98 - remainder(text) * 10 % 97) % 97);
        }
    };

    private final String written;
    private final String alphabet;
    private final String formula;

    Scheme(String written, String alphabet, String formula) {
        this.written = written;
        this.alphabet = alphabet;
        this.formula = formula;
    }

    abstract int remainder(String text);

    abstract String check(String text);

    String alphabet() {
        return alphabet;
    }

    Step step(String text) {
        return Step.of("checkSum", formula, remainder(text), "", "%s", text);
    }

    @Override
    public String toString() {
        return written;
    }
}

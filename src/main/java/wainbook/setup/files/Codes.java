package wainbook.setup.files;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** The codes that one file defines: each once, and every reference to one of them must hit. */
final class Codes {

    private final Map<String, Place> places = new HashMap<>();
    private final String what;
    private final List<Fault> faults;
    private final boolean complete;

    private Codes(String what, List<Fault> faults, boolean complete) {
        this.what = what;
        this.faults = faults;
        this.complete = complete;
    }

    /**
     * Gathers what a file, or all files of a folder, define.
     *
     * @param field where the code stands in each
     * @param from the file's name or the folder's; if it has faults already, some codes may be lost with them, and nobody is
     *     told that a reference misses
     */
    static <T> Codes of(
            List<Located<T>> defined,
            Function<T, String> code,
            String field,
            String from,
            List<Fault> faults,
            String what) {
        var codes = new Codes(
                what,
                faults,
                faults.stream().noneMatch(fault -> fault.place().file().startsWith(from)));
        for (Located<T> one : defined) {
            Place former = codes.places.putIfAbsent(code.apply(one.value()), one.place());
            if (former != null) {
                faults.add(Fault.of(
                        one.at(field), "codeTwice", code.apply(one.value()), "one " + what + ", already at " + former));
            }
        }
        return codes;
    }

    void require(String code, Place place) {
        if (complete && !places.containsKey(code)) {
            faults.add(Fault.of(place, "unknownCode", code, "a known " + what));
        }
    }

    boolean complete() {
        return complete;
    }

    Set<String> all() {
        return places.keySet();
    }
}

package wainbook.handover.requirement;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wainbook.predicate.Vocabulary;
import wainbook.process.VehicleFacts;

/**
 * Facts as somebody stated them, brought into the form that rules read. {@code packs} may be a number or the list of the
 * packs fitted, each with its {@code type}; {@code waste_streams} may be codes, with * for hazardous, or groups of
 * {@code code} and {@code hazardous}; {@code refrigerant} may be its name, or whether any was handled.
 */
public final class StatedFacts {

    private StatedFacts() {}

    /** What is stated; nulls are left out, and so stay unknown. */
    public static Map<String, Object> plain(Map<String, ?> stated) {
        var plain = new LinkedHashMap<String, Object>();
        stated.forEach((name, value) -> {
            if (value != null) {
                plain.put(name, value);
            }
        });
        if (plain.get("packs") instanceof Collection<?> packs) {
            plain.put("packs", packs.size());
            if (packs.stream().allMatch(StatedFacts::hasType)) {
                plain.putIfAbsent(
                        "pack_types",
                        packs.stream().map(StatedFacts::type).distinct().toList());
            }
        }
        if (plain.get("waste_streams") instanceof Collection<?> streams) {
            plain.put("waste_streams", streams.stream().map(StatedFacts::stream).toList());
        }
        if (plain.get("refrigerant") instanceof Boolean handled) {
            plain.put("refrigerant", handled ? "handled" : "none");
        }
        return plain;
    }

    /** What does not fit, field by field. */
    public static List<Vocabulary.Misfit> misfits(Map<String, ?> stated) {
        return VehicleFacts.VOCABULARY.misfits(plain(stated));
    }

    private static boolean hasType(Object pack) {
        return pack instanceof String || (pack instanceof Map<?, ?> group && group.get("type") instanceof String);
    }

    private static String type(Object pack) {
        return pack instanceof Map<?, ?> group ? String.valueOf(group.get("type")) : String.valueOf(pack);
    }

    private static Object stream(Object stream) {
        if (stream instanceof Map<?, ?> group && group.get("code") instanceof String code) {
            return Boolean.TRUE.equals(group.get("hazardous")) && !code.endsWith("*") ? code + "*" : code;
        }
        return stream instanceof String text ? text.strip() : stream;
    }
}

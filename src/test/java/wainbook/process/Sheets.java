package wainbook.process;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import wainbook.predicate.FactType;
import wainbook.predicate.Predicates;
import wainbook.predicate.Vocabulary;
import wainbook.process.joint.Joint;
import wainbook.process.joint.JointClass;
import wainbook.process.rule.Known;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckSheet;
import wainbook.process.sheet.Condition;
import wainbook.process.sheet.Limits;

/** Small sheets, items and joints for tests. */
public final class Sheets {

    public static final Joint LUG = joint("HV-LUG-M8", JointClass.A, true);
    static final Joint BRACKET = joint("BRK-M12", JointClass.B, false);
    public static final Joint CLIP = joint("CLIP-M6", JointClass.C, false);

    private Sheets() {}

    public static Known known() {
        return new Known(List.of(LUG, BRACKET, CLIP), Set.of("fitting"), Set.of("insulation-tester"), predicates());
    }

    private static Predicates predicates() {
        Map<String, FactType> facts = new LinkedHashMap<>();
        facts.put("tail_lift", FactType.TRUTH);
        facts.put("axles", FactType.WHOLE);
        return new Predicates(new Vocabulary(facts));
    }

    public static CheckSheet sheet(CheckItem... items) {
        return new CheckSheet("FIT-12M", "High-voltage fitting", List.of(items), "fitting");
    }

    public static CheckItem item(String key, String... after) {
        return item(key, new Ask.Confirm(Optional.empty()), Condition.NONE, Arrays.asList(after));
    }

    public static CheckItem asking(String key, Ask asks) {
        return item(key, asks, Condition.NONE, List.of());
    }

    public static CheckItem item(String key, Ask asks, Condition condition, List<String> after) {
        return new CheckItem(
                key,
                "Do " + key,
                asks,
                condition,
                Optional.empty(),
                Optional.empty(),
                10,
                Optional.empty(),
                List.of(),
                after,
                List.of(),
                Optional.empty(),
                3,
                Optional.empty());
    }

    public static CheckItem when(String key, String condition) {
        return new CheckItem(
                key,
                "Do " + key,
                new Ask.Photograph(),
                Condition.NONE,
                Optional.empty(),
                Optional.empty(),
                10,
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                Optional.of(condition),
                3,
                Optional.empty());
    }

    public static Joint joint(String code, JointClass jointClass, boolean highVoltage) {
        return new Joint(
                code,
                "Joint " + code,
                jointClass,
                2,
                Joint.Order.LIST,
                new Joint.Torque(decimal("20"), new Joint.Window(decimal("18"), decimal("22"))),
                Optional.empty(),
                "torque-wrench",
                2,
                Optional.of("M8 8.8 dry"),
                highVoltage,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    public static Ask.Measure measure(UnaryOperator<Limits> works, Limits legal) {
        return new Ask.Measure(
                "insulation resistance",
                "MΩ",
                Optional.of(works.apply(legal)),
                Optional.of(legal),
                Optional.of("insulation-tester"),
                Optional.empty());
    }

    public static BigDecimal decimal(String text) {
        return new BigDecimal(text);
    }
}

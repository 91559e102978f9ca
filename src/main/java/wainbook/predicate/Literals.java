package wainbook.predicate;

import com.google.re2j.Pattern;
import com.google.re2j.PatternSyntaxException;
import dev.cel.common.CelAbstractSyntaxTree;
import dev.cel.common.CelSourceLocation;
import dev.cel.common.ast.CelConstant;
import dev.cel.common.ast.CelExpr;
import dev.cel.common.navigation.CelNavigableAst;
import dev.cel.common.navigation.CelNavigableExpr;
import java.util.List;
import java.util.Optional;

/**
 * Looks at the dates and patterns written into a condition. The language finds a bad one only when it meets it, which for
 * a rule that is released today may be years later.
 */
final class Literals {

    private Literals() {}

    static List<Compiled.Fault> faults(CelAbstractSyntaxTree tree) {
        return CelNavigableAst.fromAst(tree)
                .getRoot()
                .allNodes()
                .map(CelNavigableExpr::expr)
                .filter(expr -> expr.exprKind().getKind() == CelExpr.ExprKind.Kind.CALL)
                .flatMap(expr -> trouble(expr.call()).map(message -> at(tree, expr, message)).stream())
                .toList();
    }

    private static Optional<String> trouble(CelExpr.CelCall call) {
        if (call.args().isEmpty()) {
            return Optional.empty();
        }
        CelExpr last = call.args().get(call.args().size() - 1);
        if (last.exprKind().getKind() != CelExpr.ExprKind.Kind.CONSTANT
                || last.constant().getKind() != CelConstant.Kind.STRING_VALUE) {
            return Optional.empty();
        }
        String text = last.constant().stringValue();
        return switch (call.function()) {
            case "date" -> DateText.read(text).isPresent() ? Optional.empty() : Optional.of("no such date: " + text);
            case "matches" -> pattern(text);
            default -> Optional.empty();
        };
    }

    private static Optional<String> pattern(String text) {
        try {
            Pattern.compile(text);
            return Optional.empty();
        } catch (PatternSyntaxException wrong) {
            return Optional.of(wrong.getMessage());
        }
    }

    private static Compiled.Fault at(CelAbstractSyntaxTree tree, CelExpr expr, String message) {
        CelSourceLocation place = Optional.ofNullable(
                        tree.getSource().getPositionsMap().get(expr.id()))
                .flatMap(offset -> tree.getSource().getOffsetLocation(offset))
                .orElse(CelSourceLocation.of(1, 0));
        return new Compiled.Fault(place.getLine(), place.getColumn() + 1, message);
    }
}

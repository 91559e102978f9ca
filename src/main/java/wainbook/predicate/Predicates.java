package wainbook.predicate;

import dev.cel.bundle.Cel;
import dev.cel.bundle.CelBuilder;
import dev.cel.bundle.CelFactory;
import dev.cel.common.CelAbstractSyntaxTree;
import dev.cel.common.CelFunctionDecl;
import dev.cel.common.CelIssue;
import dev.cel.common.CelOptions;
import dev.cel.common.CelOverloadDecl;
import dev.cel.common.CelValidationException;
import dev.cel.common.CelValidationResult;
import dev.cel.common.types.SimpleType;
import dev.cel.parser.CelStandardMacro;
import dev.cel.runtime.CelEvaluationException;
import dev.cel.runtime.CelFunctionBinding;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Compiles conditions in the Common Expression Language over one vocabulary. Thread-safe, and so are the predicates it
 * makes; both are worth keeping, since the first costs some tenths of a second.
 *
 * <p>Besides the language's own functions there is {@code date('2014-01-01')}, to be compared with facts that are dates.
 */
public final class Predicates {

    /** The longest condition, in characters: more than any rule of a works needs, and a bound on what one may cost. */
    public static final int MAX_CHARACTERS = 4000;

    private static final CelOptions OPTIONS = CelOptions.current()
            .enableUnknownTracking(true)
            .enableHeterogeneousNumericComparisons(true)
            .maxExpressionCodePointSize(MAX_CHARACTERS)
            .maxParseRecursionDepth(50)
            .maxParseExpressionNodeCount(500)
            .comprehensionMaxIterations(1000)
            .maxRegexProgramSize(500)
            .build();

    private final Vocabulary vocabulary;
    private final Cel cel;

    public Predicates(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
        CelBuilder builder = CelFactory.plannerCelBuilder()
                .setOptions(OPTIONS)
                .setStandardMacros(
                        CelStandardMacro.ALL,
                        CelStandardMacro.EXISTS,
                        CelStandardMacro.EXISTS_ONE,
                        CelStandardMacro.FILTER,
                        CelStandardMacro.MAP)
                .setResultType(SimpleType.BOOL);
        vocabulary.types().forEach((name, type) -> builder.addVar(name, type.cel));
        this.cel = builder.addFunctionDeclarations(CelFunctionDecl.newFunctionDeclaration(
                        "date",
                        CelOverloadDecl.newGlobalOverload("date_string", SimpleType.TIMESTAMP, SimpleType.STRING)))
                .addFunctionBindings(CelFunctionBinding.from("date_string", String.class, Predicates::date))
                .build();
    }

    public Vocabulary vocabulary() {
        return vocabulary;
    }

    public Compiled compile(String text) {
        CelValidationResult result = cel.compile(text);
        if (result.hasError()) {
            return new Compiled.Faulty(
                    result.getErrors().stream().map(Predicates::fault).toList());
        }
        try {
            CelAbstractSyntaxTree tree = result.getAst();
            List<Compiled.Fault> literals = Literals.faults(tree);
            return literals.isEmpty()
                    ? new Compiled.Sound(new Predicate(text, names(tree), vocabulary, cel.createProgram(tree)))
                    : new Compiled.Faulty(literals);
        } catch (CelValidationException | CelEvaluationException broken) {
            return new Compiled.Faulty(List.of(new Compiled.Fault(1, 1, broken.getMessage())));
        }
    }

    private Set<String> names(CelAbstractSyntaxTree tree) {
        var names = new HashSet<String>();
        tree.getReferenceMap().values().stream()
                .map(reference -> reference.name())
                .filter(vocabulary.names()::contains)
                .forEach(names::add);
        return names;
    }

    private static Compiled.Fault fault(CelIssue issue) {
        // A text that is too long or too deep has no place; the library gives it line -1.
        return new Compiled.Fault(
                Math.max(1, issue.getSourceLocation().getLine()),
                Math.max(0, issue.getSourceLocation().getColumn()) + 1,
                plain(issue.getMessage()));
    }

    /** A parser's list of all that it would have liked instead helps nobody. */
    private static String plain(String message) {
        int list = message.indexOf(" expecting {");
        return (list < 0 ? message : message.substring(0, list))
                .replace("'<EOF>'", "the end of the text")
                .replace(" (in container '')", "");
    }

    private static Object date(String text) {
        return DateText.read(text)
                .map(FactType::midnight)
                .orElseThrow(() -> new IllegalArgumentException("no such date: " + text));
    }
}

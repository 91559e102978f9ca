package wainbook.handover.issue;

import io.quarkus.qute.Engine;
import io.quarkus.qute.Expression;
import io.quarkus.qute.ResultMapper;
import io.quarkus.qute.TemplateException;
import io.quarkus.qute.TemplateNode.Origin;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import wainbook.act.Outcome;
import wainbook.act.Reason;

/**
 * Fills a text from figures. The text is CommonMark with tables; figures stand in braces, such as {@code {order.vin}}, and
 * rows are gone through by {@code {#for pack in packs}…{/for}}. It reaches nothing but the figures it is given; what they say
 * is always plain text. Headings begin at the second level, since the title is the first.
 */
final class Filling {

    private static final Pattern MARKS = Pattern.compile("[\\\\`*_{}\\[\\]<>()#+\\-.!|~&\"']");

    /** Sections of a text. Others could read a figure as a text, or make numbers to count by. */
    private static final Set<String> SECTIONS = Set.of("for", "each", "if", "else");

    private static final Pattern SECTION = Pattern.compile("\\{(#|/)(\\w+)([^}]*)");
    private static final Pattern BY_NUMBER = Pattern.compile("(^|\\sin)\\s+-?\\d");
    private static final int DEEPEST = 2;

    private static final Engine ENGINE = Engine.builder()
            .addDefaults()
            .strictRendering(true)
            .addResultMapper(new Plain())
            .build();

    private static final List<org.commonmark.Extension> TABLES = List.of(TablesExtension.create());
    private static final Parser PARSER = Parser.builder().extensions(TABLES).build();
    private static final HtmlRenderer HTML = HtmlRenderer.builder()
            .extensions(TABLES)
            .escapeHtml(true)
            .sanitizeUrls(true)
            .build();

    private Filling() {}

    /** A figure is text, whatever signs of CommonMark it holds, and stays on its line. */
    private static final class Plain implements ResultMapper {
        @Override
        public boolean appliesTo(Origin origin, Object result) {
            return true;
        }

        @Override
        public String map(Object result, Expression expression) {
            String line = String.valueOf(result).replaceAll("\\s+", " ");
            return MARKS.matcher(line).replaceAll(found -> Matcher.quoteReplacement("\\" + found.group()));
        }
    }

    /** Well-formed XHTML; refused with what cannot be read or filled, and where. */
    static Outcome<String> html(String text, Map<String, Object> figures) {
        List<Reason> unbounded = unbounded(text);
        if (!unbounded.isEmpty()) {
            return Outcome.refused(unbounded);
        }
        try {
            return Outcome.done(html(ENGINE.parse(text).render(figures)));
        } catch (TemplateException wrong) {
            String where = wrong.getOrigin() == null
                    ? ""
                    : String.valueOf(wrong.getOrigin().getLine());
            return Outcome.refused(Reason.of("handover.textWrong", Reason.WORKS_RULE, where, told(wrong))
                    .liftedAt("#text"));
        }
    }

    /** What could go on without end: the engine itself keeps no bound. */
    private static List<Reason> unbounded(String text) {
        int depth = 0;
        Matcher found = SECTION.matcher(text);
        while (found.find()) {
            String name = found.group(2);
            boolean loop = name.equals("for") || name.equals("each");
            boolean begins = found.group(1).equals("#");
            if (!SECTIONS.contains(name)) {
                return List.of(
                        Reason.of("handover.textTag", Reason.WORKS_RULE, name).liftedAt("#text"));
            }
            depth += loop ? (begins ? 1 : -1) : 0;
            if (depth > DEEPEST
                    || (loop && begins && BY_NUMBER.matcher(found.group(3)).find())) {
                return List.of(Reason.of("handover.textLoop", Reason.WORKS_RULE).liftedAt("#text"));
            }
        }
        return List.of();
    }

    /** The engine's own first sentence, without the name it made up for the text. */
    private static String told(TemplateException wrong) {
        return String.valueOf(wrong.getMessage())
                .lines()
                .findFirst()
                .orElse("")
                .replaceAll("\\s*in (expression|template).*|[.\\s]+$", "");
    }

    private static String html(String filled) {
        Node document = PARSER.parse(filled);
        document.accept(new Levels());
        return HTML.render(document);
    }

    /** No level is left out, or whoever hears the document read loses the thread (ISO 14289-1, 7.4.2). */
    private static final class Levels extends AbstractVisitor {
        private int before = 1;

        @Override
        public void visit(Heading heading) {
            before = Math.min(Math.min(heading.getLevel() + 1, before + 1), 4);
            heading.setLevel(before);
        }
    }
}

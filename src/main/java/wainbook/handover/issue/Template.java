package wainbook.handover.issue;

import java.util.List;

/**
 * The text of a document that the works issues.
 *
 * @param code short and stable
 * @param about what it is for, in a sentence
 * @param answers the rules whose document it is, in whichever sets
 * @param needs figures without which it cannot be issued, by the names of {@link Figures}
 * @param revision 1 as the program brings it
 * @param text by the rules of {@link Filling}
 */
public record Template(
        String code, String title, String about, List<String> answers, List<String> needs, int revision, String text) {

    public Template {
        answers = List.copyOf(answers);
        needs = List.copyOf(needs);
    }

    Template changed(int later, String other) {
        return new Template(code, title, about, answers, needs, later, other);
    }
}

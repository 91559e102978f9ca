package wainbook.isolation.paper;

import java.util.List;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.process.plan.Plan;

/**
 * What is said at a vehicle of isolations on paper. They are no steps of the vehicle’s isolation in the tool, whose state is
 * made by {@link wainbook.isolation.IsolationSaying} alone: a family of their own keeps the two apart.
 */
public sealed interface OnPaperSaying extends Saying {

    /** Number of the paper form. */
    String form();

    /** Somebody says that this form is being worked by at the vehicle. */
    @Kind("isolation.paperInUse/1")
    record PaperInUse(String form) implements OnPaperSaying {}

    /** The form is not in use here, or not any more, and no isolation was kept on it: who looked, says how they know. */
    @Kind("isolation.paperEnded/1")
    record PaperEnded(String form, String reason) implements OnPaperSaying {}

    /**
     * An isolation as a form was filled in, compared with its photograph by a second person.
     *
     * @param plan the plan that it was judged by
     * @param notShown keys of the rules that it does not keep; with one of them it does not show the vehicle dead
     * @param closed whether every lock is off and the vehicle restored, by the form
     */
    @Kind("isolation.onPaper/1")
    record OnPaper(
            String form,
            EvidenceFile photograph,
            Plan plan,
            IsolationForm written,
            List<String> notShown,
            boolean closed,
            String transcribedBy,
            String comparedBy)
            implements OnPaperSaying {
        public OnPaper {
            notShown = List.copyOf(notShown);
        }

        /** Whether the person is named on the form, or typed it in, or compared it. */
        public boolean by(String person) {
            return transcribedBy.equals(person)
                    || comparedBy.equals(person)
                    || written.people().contains(person);
        }
    }
}

package wainbook.paper;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFile;

/** Writes a filled-in form over, with a photograph of it. Nothing of it counts until a second person has compared the two. */
@ApplicationScoped
public class Transcribing {

    /**
     * What stands on the form.
     *
     * @param picture the photograph; nothing is typed in without one
     * @param over what stands on it
     */
    public record ToTranscribe(UUID id, int form, String vehicle, Optional<EvidenceFile> picture, Written over)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return PaperSaying.Transcribed.class;
        }
    }

    private static final String CODE = "[\\p{Alnum}][\\p{Alnum}._-]{0,79}";

    private final Ledger ledger;

    Transcribing(Ledger ledger) {
        this.ledger = ledger;
    }

    public Outcome<Entry> transcribe(ToTranscribe asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            PaperForms all = PaperForms.of(reading.of(Subject.works()));
            Optional<PaperForm> form = all.number(asked.form());
            if (form.isEmpty()) {
                return Decision.refuse(Reason.of("paper.noSuchForm", Reason.WORKS_RULE, PaperForm.code(asked.form()))
                        .liftedAt("/paper"));
            }
            List<Reason> against = new TranscribingRules(
                            form.get(),
                            all,
                            asked.vehicle(),
                            asked.over(),
                            reading.moment().at())
                    .against(
                            asked.picture(),
                            InWorks.vehicle(ledger, asked.vehicle()).isPresent(),
                            this::isKnown);
            return against.isEmpty()
                    ? Decision.say(
                            Subject.works(),
                            asked.over()
                                    .as(
                                            asked.form(),
                                            form.get().transcribed().size() + 1,
                                            asked.vehicle(),
                                            asked.picture().orElseThrow()))
                    : Decision.refuse(against);
        });
    }

    private boolean isKnown(String number) {
        return number.matches(CODE) && !ledger.history(Subject.person(number)).isEmpty();
    }
}

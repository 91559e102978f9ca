package wainbook.trace.campaign.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
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
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.CampaignSaying.Answer;
import wainbook.trace.campaign.CampaignSaying.Answered;
import wainbook.trace.campaign.Step;
import wainbook.works.shift.WorksDay;

/** What an operator says of a vehicle, or that nothing comes back. A later answer stands beside an earlier one. */
@ApplicationScoped
public class Answering {

    public record ToAnswer(UUID id, String campaign, String order, Answer answer, LocalDate on, String words)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Campaign.subject(campaign));
        }

        @Override
        public Class<? extends Saying> says() {
            return Answered.class;
        }
    }

    private final Ledger ledger;
    private final OneVehicle vehicles;
    private final WorksDay day;

    Answering(Ledger ledger, OneVehicle vehicles, WorksDay day) {
        this.ledger = ledger;
        this.vehicles = vehicles;
        this.day = day;
    }

    public Outcome<Entry> answer(ToAnswer asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            var typed = new ArrayList<Reason>();
            Typed.against(asked.words(), Typed.WORDS, "words").ifPresent(typed::add);
            if (asked.on().isAfter(day.of(reading.moment().at()))) {
                typed.add(Reason.of("campaign.dayToCome", Reason.WORKS_RULE, asked.on())
                        .liftedAt("#answeredOn"));
            }
            return vehicles.decide(
                    Step.ANSWER,
                    asked.campaign(),
                    asked.order(),
                    reading,
                    typed,
                    (campaign, one) -> Decision.say(
                            Campaign.subject(campaign.number()),
                            new Answered(one.order(), asked.answer(), asked.on(), asked.words())));
        });
    }
}

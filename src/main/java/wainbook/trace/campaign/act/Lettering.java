package wainbook.trace.campaign.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
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
import wainbook.ledger.Reading;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.CampaignSaying.LetterSent;
import wainbook.trace.campaign.CampaignSaying.LetterWorded;
import wainbook.trace.campaign.CampaignSaying.Way;
import wainbook.trace.campaign.letter.Letter;
import wainbook.trace.campaign.letter.Letters;
import wainbook.works.shift.WorksDay;

/** Puts the letters in the works' own words, and notes each that was sent, with the letter itself. */
@ApplicationScoped
public class Lettering {

    public record ToWord(UUID id, String campaign, String text) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Campaign.subject(campaign));
        }

        @Override
        public Class<? extends Saying> says() {
            return LetterWorded.class;
        }
    }

    /** @param seen the number of the campaign's stream when the letter was read: what is kept is what was sent */
    public record ToSend(UUID id, String campaign, Optional<Long> seen, String operator, LocalDate on, Way way)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Campaign.subject(campaign));
        }

        @Override
        public Class<? extends Saying> says() {
            return LetterSent.class;
        }
    }

    private final Ledger ledger;
    private final Letters letters;
    private final EvidenceFiles files;
    private final WorksDay day;

    Lettering(Ledger ledger, Letters letters, EvidenceFiles files, WorksDay day) {
        this.ledger = ledger;
        this.letters = letters;
        this.files = files;
        this.day = day;
    }

    public Outcome<Entry> word(ToWord asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            var against = new ArrayList<>(against(asked.campaign(), reading));
            Typed.against(asked.text(), Typed.WORDS, "text").ifPresent(against::add);
            return against.isEmpty()
                    ? Decision.say(Campaign.subject(asked.campaign()), new LetterWorded(asked.text()))
                    : Decision.refuse(against);
        });
    }

    public Outcome<Entry> send(ToSend asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            var against = new ArrayList<>(against(asked.campaign(), reading));
            return against.isEmpty() ? send(asked, reading) : Decision.refuse(against);
        });
    }

    private Decision send(ToSend asked, Reading reading) {
        Campaign campaign =
                Campaign.of(reading.of(Campaign.subject(asked.campaign()))).orElseThrow();
        var against = new ArrayList<Reason>();
        Optional<Letter> letter =
                letters.next(campaign, asked.operator(), reading.moment().at());
        if (letter.isEmpty()) {
            against.add(Reason.of("campaign.nobodyToWriteTo", Reason.WORKS_RULE, asked.operator(), campaign.number())
                    .liftedAt(campaign.path()));
        }
        LocalDate today = day.of(reading.moment().at());
        if (asked.on().isAfter(today)) {
            against.add(Reason.of("campaign.dayToCome", Reason.WORKS_RULE, asked.on())
                    .liftedAt("#sentOn"));
        }
        LocalDate opened = day.of(campaign.opened().moment().at());
        if (asked.on().isBefore(opened)) {
            against.add(Reason.of("campaign.dayBefore", Reason.WORKS_RULE, asked.on(), opened)
                    .liftedAt("#sentOn"));
        }
        return against.isEmpty() ? sent(campaign, letter.orElseThrow(), asked) : Decision.refuse(against);
    }

    private Decision sent(Campaign campaign, Letter letter, ToSend asked) {
        EvidenceFile file = files.keep(letters.pdf(letter), "application/pdf");
        return Decision.say(
                Campaign.subject(campaign.number()),
                new LetterSent(
                        letter.number(),
                        letter.operator(),
                        letter.vehicles().stream().map(Letter.Line::order).toList(),
                        file,
                        asked.on(),
                        asked.way()));
    }

    private static List<Reason> against(String number, Reading reading) {
        Optional<Campaign> known = Campaign.of(reading.of(Campaign.subject(number)));
        if (known.isEmpty()) {
            return List.of(Reason.of("campaign.notFound", Reason.WORKS_RULE, number));
        }
        return known.get().isOpen()
                ? List.of()
                : List.of(Reason.of("campaign.closedAlready", Reason.WORKS_RULE, number)
                        .liftedAt(Campaign.path(number) + "#reopen"));
    }
}

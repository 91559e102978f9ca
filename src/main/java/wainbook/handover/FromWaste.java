package wainbook.handover;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wainbook.handover.HandoverSaying.State;
import wainbook.ledger.History;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.waste.Papers;
import wainbook.waste.VehicleWaste;

/** What the waste record can answer of a vehicle's documents. It fills a form in; a clerk notes, nobody else. */
@ApplicationScoped
public class FromWaste {

    /** The documents that it knows of, and whether each is about hazardous waste. */
    private static final Map<String, Boolean> WASTE_NOTES =
            Map.of("GB-34", true, "GB-35", false, "EU-13", true, "DE-20", true);

    /** Notes that count only with a qualified electronic signature: made outside, so never in hand by this record alone. */
    private static final Set<String> SIGNED_OUTSIDE = Set.of("DE-20");

    private static final String ENGINE_FATE = "GB-36";
    private static final int LONGEST_REFERENCE = 80;

    /**
     * What could be noted of a document.
     *
     * @param sentence how it stands, for people
     */
    public record Answer(State state, String reference, String sentence) {}

    private final VehicleWaste waste;

    FromWaste(VehicleWaste waste) {
        this.waste = waste;
    }

    public Optional<Answer> of(History history, String requirement) {
        if (requirement.equals(ENGINE_FATE)) {
            return waste.engine(history)
                    .map(said -> new Answer(
                            State.IN_HAND,
                            shortened(said.serial()),
                            Words.of("waste.forEngine", Formats.date(said.on()), said.serial())));
        }
        return Optional.ofNullable(WASTE_NOTES.get(requirement))
                .flatMap(hazardous -> waste.papers(history, hazardous))
                .map(papers -> answer(requirement, papers));
    }

    /** The sentences by document, for a list. */
    public Map<String, String> sentences(History history) {
        var sentences = new LinkedHashMap<String, String>();
        for (boolean hazardous : new boolean[] {true, false}) {
            waste.papers(history, hazardous)
                    .ifPresent(papers -> WASTE_NOTES.forEach((id, about) -> {
                        if (about == hazardous) {
                            sentences.put(id, answer(id, papers).sentence());
                        }
                    }));
        }
        of(history, ENGINE_FATE).ifPresent(answer -> sentences.put(ENGINE_FATE, answer.sentence()));
        return sentences;
    }

    private static Answer answer(String requirement, Papers papers) {
        boolean outside = SIGNED_OUTSIDE.contains(requirement);
        return new Answer(
                papers.left() && !outside ? State.IN_HAND : State.APPLIED_FOR,
                shortened(papers.reference()),
                outside ? Words.of("handover.wasteSignedOutside", papers.sentence()) : papers.sentence());
    }

    private static String shortened(String reference) {
        return reference.length() <= LONGEST_REFERENCE
                ? reference
                : reference.substring(0, LONGEST_REFERENCE - 1).strip() + "…";
    }
}

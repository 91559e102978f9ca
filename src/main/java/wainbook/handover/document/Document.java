package wainbook.handover.document;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import wainbook.handover.HandoverSaying.DocumentNoted;
import wainbook.handover.Standing;
import wainbook.handover.requirement.Requirement;
import wainbook.handover.requirement.Rule;

/**
 * A document of one vehicle's set as it stands on a day.
 *
 * @param noted what was noted of it last
 * @param followsBy for one that may follow, the day on which somebody asks where it is
 */
public record Document(
        Requirement requirement, Optional<Noted> noted, Standing standing, Optional<LocalDate> followsBy) {

    /** A note, with who made it and when. */
    public record Noted(DocumentNoted said, String who, Instant at, long entry) {}

    static Document of(Requirement requirement, Optional<Noted> noted, LocalDate handover) {
        return new Document(
                requirement,
                noted,
                Standing.of(requirement, noted.map(Noted::said), handover),
                requirement.rule().followDays().map(handover::plusDays));
    }

    public String id() {
        return rule().id();
    }

    public Rule rule() {
        return requirement.rule();
    }

    /** Whether the vehicle cannot be handed over while it stands like this. A rule from memory asks and never bars. */
    public boolean bars() {
        return rule().mayBarHandover() && standing.isOpen();
    }

    /** Whether it was waived where it would have barred. */
    public boolean waivedAway() {
        return rule().mayBarHandover() && standing == Standing.WAIVED;
    }

    /** Whether a person has to state a fact before anybody can say if it is needed. */
    public boolean waitsForFacts() {
        return standing == Standing.ASK && !requirement.missingFacts().isEmpty();
    }

    /** Whether it is in hand and will have ended by that day. */
    public boolean endsBefore(LocalDate day) {
        return standing == Standing.IN_HAND
                && noted.flatMap(note -> note.said().validUntil())
                        .filter(day::isAfter)
                        .isPresent();
    }

    /** Whether it should have followed by the day and did not. */
    public boolean overdueOn(LocalDate day) {
        return standing.isOpen() && followsBy.filter(day::isAfter).isPresent();
    }
}

package wainbook.paper;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import wainbook.act.Reason;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.paper.PaperForm.State;

/** Whether a filled-in form may be typed in. What it says is judged later, when a second person has agreed to it. */
record TranscribingRules(PaperForm form, PaperForms all, String vehicle, Written written, Instant now) {

    private static final List<String> PICTURES = List.of("image/jpeg", "image/png", "image/webp");

    /** @param known whether a number is somebody’s of the works */
    List<Reason> against(Optional<EvidenceFile> photograph, boolean vehicleInWorks, Predicate<String> known) {
        var against = new ArrayList<Reason>();
        state().ifPresent(against::add);
        if (form.sort() != written.sort()) {
            against.add(Reason.of("paper.otherSort", Reason.WORKS_RULE, form.code()));
        }
        if (!vehicleInWorks) {
            against.add(Reason.of("paper.noVehicle", Reason.WORKS_RULE, vehicle).liftedAt("#vehicle"));
        }
        form.vehicle()
                .filter(printed -> !printed.equals(vehicle))
                .ifPresent(
                        printed -> against.add(Reason.of("paper.otherVehicle", Reason.WORKS_RULE, form.code(), printed)
                                .liftedAt("#vehicle")));
        against.addAll(photograph(photograph));
        written.people().stream()
                .filter(known.negate())
                .forEach(number -> against.add(Reason.of("paper.personUnknown", Reason.WORKS_RULE, number)));
        against.addAll(times());
        if (written instanceof Written.Items items && items.lines().isEmpty()) {
            against.add(Reason.of("paper.noLines", Reason.WORKS_RULE));
        }
        return List.copyOf(against);
    }

    /** A form that is typed in stays closed, but for one that said that locks were still on, or a permit still out. */
    private Optional<Reason> state() {
        return switch (form.state()) {
            case BLANK, IN_USE -> Optional.empty();
            case WAITING ->
                Optional.of(
                        Reason.of("paper.waits", Reason.WORKS_RULE, form.code()).liftedAt("/paper/" + form.code()));
            case ENTERED -> Optional.of(Reason.of("paper.enteredAlready", Reason.WORKS_RULE, form.code()));
            case SPOILED -> Optional.of(Reason.of("paper.spoiledOne", Reason.WORKS_RULE, form.code()));
        };
    }

    private List<Reason> photograph(Optional<EvidenceFile> photograph) {
        if (photograph.filter(file -> PICTURES.contains(file.mediaType())).isEmpty()) {
            return List.of(
                    Reason.of("paper.photographMissing", Reason.WORKS_RULE).liftedAt("#file"));
        }
        return all
                .with(photograph.get(), form.number())
                .map(other -> Reason.of("paper.photographUsed", Reason.WORKS_RULE, other.code())
                        .liftedAt("#file"))
                .stream()
                .toList();
    }

    /** A form knows minutes: the minute it was printed in is early enough. */
    private List<Reason> times() {
        Instant printedAt = form.printed().moment().at().truncatedTo(ChronoUnit.MINUTES);
        var against = new ArrayList<Reason>();
        written.times().stream()
                .filter(at -> at.isBefore(printedAt))
                .min(Instant::compareTo)
                .ifPresent(at -> against.add(Reason.of("paper.beforePrinted", Reason.WORKS_RULE, at, printedAt)));
        written.times().stream()
                .filter(at -> at.isAfter(now))
                .max(Instant::compareTo)
                .ifPresent(at -> against.add(Reason.of("paper.inTheFuture", Reason.WORKS_RULE, at)));
        return against;
    }

    /** What is asked of whoever compares. */
    static List<Reason> againstComparing(PaperForm form, int transcription, String who) {
        Optional<PaperSaying.Transcribed> waiting =
                form.waiting().map(entry -> (PaperSaying.Transcribed) entry.saying());
        if (form.state() != State.WAITING
                || waiting.filter(said -> said.transcription() == transcription).isEmpty()) {
            return List.of(Reason.of("paper.nothingWaits", Reason.WORKS_RULE, form.code()));
        }
        String transcriber = form.waiting().orElseThrow().moment().who();
        var against = new ArrayList<Reason>();
        if (transcriber.equals(who)) {
            against.add(Reason.of("paper.ownTranscription", Reason.WORKS_RULE));
        }
        Written written = Written.of(waiting.orElseThrow());
        if (written instanceof Written.Isolation
                && !written.people().contains(who)
                && !written.people().contains(transcriber)) {
            against.add(Reason.of("paper.neitherNamed", Reason.WORKS_RULE, String.join(", ", written.people())));
        }
        return List.copyOf(against);
    }
}

package wainbook.station;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.matter.MatterSaying.Disposed;
import wainbook.matter.MatterSaying.Disposition;
import wainbook.matter.MatterSaying.NonconformityOpened;
import wainbook.order.OrderSaying.Rebound;
import wainbook.order.WorkOrder;
import wainbook.predicate.Answer;
import wainbook.process.sheet.Applicability;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckItem.Dependence;
import wainbook.station.ItemState.Status;
import wainbook.station.ItemState.Taken;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.CarriedOver;
import wainbook.station.StationSaying.Determined;
import wainbook.station.StationSaying.GivenBack;
import wainbook.station.StationSaying.HandedOn;
import wainbook.station.StationSaying.Observed;
import wainbook.station.StationSaying.ReSequenced;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.Tabled;
import wainbook.station.StationSaying.TakenFromPaper;
import wainbook.station.StationSaying.Tightened;
import wainbook.station.StationSaying.Verdict;
import wainbook.station.StationSaying.Voided;
import wainbook.station.StationSaying.WaitBegun;
import wainbook.station.joint.BoltReading;

/** Follows one item through a vehicle's stream, entry by entry. */
public final class ItemFold {

    /** After this time a name on an item no longer keeps others from it. */
    static final Duration NAME_STANDS = Duration.ofMinutes(30);

    private final String stage;
    private final String line;
    private final CheckItem item;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Integer> openNonconformities = new ArrayList<>();
    private Optional<Entry> passing = Optional.empty();
    private Optional<Taken> taken = Optional.empty();
    private int failures;
    private boolean lastFailed;
    private boolean waiting;
    private boolean stale;
    private boolean conceded;
    private boolean gone;
    private boolean deferred;
    private boolean handedOn;

    private ItemFold(String stage, SheetLine place) {
        this.stage = stage;
        this.line = place.name();
        this.item = place.item();
    }

    static ItemState of(History history, WorkOrder order, String stage, SheetLine place) {
        var fold = new ItemFold(stage, place.on(order.facts()));
        history.entries().forEach(fold::take);
        Answer applies = Applicability.of(place.item(), order.facts());
        List<String> missing =
                applies.fold(() -> place.item().missing(order.facts()), List::<String>of, Answer.Ask::missing);
        Status status = applies.isYes() && !missing.isEmpty() ? Status.FACTS_MISSING : fold.status(applies);
        return new ItemState(
                place.on(order.facts()), status, fold.entries, fold.failures, fold.passing, fold.taken, missing);
    }

    private Status status(Answer applies) {
        if (applies.isNo()) {
            return Status.NOT_APPLICABLE;
        }
        if (!applies.isYes()) {
            return Status.FACTS_MISSING;
        }
        if (conceded) {
            return Status.CONCEDED;
        }
        if (!openNonconformities.isEmpty()) {
            return Status.NONCONFORMING;
        }
        if (passing.isPresent()) {
            return stale || otherRows() ? Status.STALE : Status.PASSED;
        }
        if (handedOn) {
            return Status.HANDED_ON;
        }
        if (gone) {
            return deferred ? Status.RE_SEQUENCED : Status.CARRIED_OVER;
        }
        if (waiting) {
            return Status.WAITING;
        }
        return lastFailed ? Status.FAILED : Status.OPEN;
    }

    /** What happens to it at the stage it was given to is that stage's evidence, and changes nothing of this one's. */
    private void take(Entry entry) {
        if (gone && !(entry.saying() instanceof ReSequenced) && !(entry.saying() instanceof CarriedOver)) {
            return;
        }
        if (entry.saying() instanceof Result result) {
            result(entry, result);
        } else if (entry.saying() instanceof WaitBegun begun && isThis(begun.about())) {
            entries.add(entry);
            waiting = true;
            taken = Optional.empty();
        } else if (entry.saying() instanceof Observed observed && isThis(observed.about())) {
            entries.add(entry);
        } else if (entry.saying() instanceof TakenFromPaper paper && isThis(paper.about())) {
            entries.add(entry);
        } else if (entry.saying() instanceof Voided voided && voided.item().equals(line)) {
            voided(entry, voided);
        } else if (entry.saying() instanceof StationSaying.Taken name
                && name.stage().equals(stage)
                && name.item().equals(item.key())) {
            taken = Optional.of(new Taken(entry.moment().who(), entry.moment().at()));
        } else if (entry.saying() instanceof GivenBack name
                && name.stage().equals(stage)
                && name.item().equals(item.key())) {
            taken = Optional.empty();
        } else if (entry.saying() instanceof ReSequenced said && isThis(said.about())) {
            gone(entry, said.toStage(), true);
        } else if (entry.saying() instanceof CarriedOver said && isThis(said.about())) {
            gone(entry, said.toStage(), false);
        } else if (entry.saying() instanceof HandedOn said && isThis(said.about())) {
            entries.add(entry);
            handedOn = true;
        } else if (entry.saying() instanceof NonconformityOpened opened
                && opened.item().equals(Optional.of(line))) {
            entries.add(entry);
            openNonconformities.add(opened.nonconformity());
        } else if (entry.saying() instanceof Disposed disposed
                && openNonconformities.remove(Integer.valueOf(disposed.nonconformity()))) {
            disposed(entry, disposed);
        } else if (entry.saying() instanceof Rebound rebound) {
            rebound(rebound);
        }
    }

    private void result(Entry entry, Result result) {
        if (isThis(result.about())) {
            entries.add(entry);
            taken = Optional.empty();
            waiting = false;
            stale = false;
            lastFailed = result.verdict() == Verdict.FAIL;
            failures += lastFailed && !secondHit(result) ? 1 : 0;
            passing = lastFailed ? Optional.empty() : Optional.of(entry);
        } else if (disturbs(result.about())) {
            stale = true;
        }
    }

    /** A second hit is no tightening, and uses up no try. */
    public static boolean secondHit(Result result) {
        return result instanceof Tightened joint && BoltReading.onlySecondHits(joint);
    }

    private void voided(Entry entry, Voided voided) {
        entries.add(entry);
        if (passing.filter(standing -> standing.id().equals(voided.entry())).isPresent()) {
            passing = Optional.empty();
        }
        if (entries.stream()
                .anyMatch(known -> known.id().equals(voided.entry()) && known.saying() instanceof WaitBegun)) {
            waiting = false;
        }
    }

    private void gone(Entry entry, String toStage, boolean reSequenced) {
        entries.add(entry);
        gone = !toStage.equals(stage);
        deferred = reSequenced;
    }

    private void disposed(Entry entry, Disposed disposed) {
        entries.add(entry);
        conceded = disposed.disposition() == Disposition.CONCESSION;
        if (!conceded) {
            failures = 0;
            passing = Optional.empty();
        }
    }

    private void rebound(Rebound rebound) {
        boolean ofThisSheet = line.startsWith(rebound.to().sheet() + "/");
        if (ofThisSheet
                && rebound.to().stage().equals(stage)
                && !rebound.keptItems().contains(item.key())) {
            passing = Optional.empty();
            failures = 0;
            lastFailed = false;
            waiting = false;
            conceded = false;
        }
    }

    /** Whether the vehicle has other rows now than it was read at: a pack more, an option fewer. */
    private boolean otherRows() {
        Object said = passing.orElseThrow().saying();
        if (item.asks() instanceof Ask.Table table && said instanceof Tabled tabled) {
            return tabled.cells().size()
                    != table.rows().size() * table.columns().size();
        }
        return item.asks() instanceof Ask.Determine ask
                && ask.method().ofParts()
                && said instanceof Determined determined
                && determined.readings().size() != ask.readings().size();
    }

    private boolean isThis(About about) {
        return about.line().equals(line);
    }

    private boolean disturbs(About other) {
        return item.dependsOn().stream()
                .anyMatch(on -> on.sort() == Dependence.Sort.PART
                        ? other.fits().contains(on.code())
                        : other.item().equals(on.code()));
    }
}

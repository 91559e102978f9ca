package wainbook.process.draft;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wainbook.act.Moment;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.process.ProcessSaying.DraftDropped;
import wainbook.process.ProcessSaying.DraftKept;
import wainbook.process.ProcessSaying.DraftProposed;
import wainbook.process.ProcessSaying.JointsReleased;
import wainbook.process.ProcessSaying.PlanReleased;
import wainbook.process.ProcessSaying.Released;
import wainbook.process.ProcessSaying.RouteReleased;
import wainbook.process.ProcessSaying.StageDefined;
import wainbook.process.ProcessSaying.StationDefined;

/**
 * One paper as its stream tells it: every revision that came into force, and the draft of the next.
 *
 * @param versions oldest first
 * @param authors everybody who kept a draft since the last revision that ended one; a draft dropped in between does not
 *     wash its author's hands of it
 */
public record Revisions(About about, List<Version> versions, Optional<Kept> draft, Set<String> authors) {

    /** A revision that came into force. */
    public record Version(int revision, Drafted what, Moment moment) {}

    /**
     * The draft as it was kept last.
     *
     * @param base the revision in force that it was begun from; 0 for something new
     * @param number of its last entry in the stream: what a person has seen who decides on it
     * @param proposed when it was held for finished
     */
    public record Kept(Drafted what, int base, Moment moment, long number, Optional<Moment> proposed) {}

    public Revisions {
        versions = List.copyOf(versions);
        authors = Set.copyOf(authors);
    }

    public static Revisions of(History history, About about) {
        var now = new Revisions(about, List.of(), Optional.empty(), Set.of());
        for (Entry entry : history.entries()) {
            now = now.and(entry);
        }
        return now;
    }

    public Optional<Version> inForce() {
        return versions.isEmpty() ? Optional.empty() : Optional.of(versions.get(versions.size() - 1));
    }

    /** The number of the revision in force; 0 before the first. */
    public int revision() {
        return inForce().map(Version::revision).orElse(0);
    }

    public Optional<Version> version(int revision) {
        return versions.stream().filter(one -> one.revision() == revision).findFirst();
    }

    /** Up to where the draft was seen by whoever sees all of this; 0 when there is none. */
    public long seen() {
        return draft.map(Kept::number).orElse(0L);
    }

    public boolean known() {
        return !versions.isEmpty() || draft.isPresent();
    }

    private Revisions and(Entry entry) {
        Saying saying = entry.saying();
        if (saying instanceof DraftKept kept && kept.draft().about().equals(about)) {
            var more = new LinkedHashSet<>(authors);
            more.add(entry.moment().who());
            var next = new Kept(kept.draft(), kept.base(), entry.moment(), entry.number(), Optional.empty());
            return new Revisions(about, versions, Optional.of(next), more);
        }
        if (saying instanceof DraftProposed said && said.about().equals(about)) {
            return new Revisions(about, versions, draft.map(kept -> proposed(kept, entry)), authors);
        }
        if (saying instanceof DraftDropped said && said.about().equals(about)) {
            return new Revisions(about, versions, Optional.empty(), authors);
        }
        return released(saying).map(version -> and(version, entry)).orElse(this);
    }

    private static Kept proposed(Kept kept, Entry entry) {
        return new Kept(kept.what(), kept.base(), kept.moment(), entry.number(), Optional.of(entry.moment()));
    }

    private Optional<Drafted> released(Saying saying) {
        return Optional.ofNullable(
                switch (about.thing()) {
                    case SHEET -> saying instanceof Released said ? new SheetDraft(said.sheet()) : null;
                    case JOINTS -> saying instanceof JointsReleased said ? new JointsDraft(said.joints()) : null;
                    case ROUTE ->
                        saying instanceof RouteReleased said
                                        && said.route().code().equals(about.called())
                                ? new RouteDraft(said.route())
                                : null;
                    case PLAN ->
                        saying instanceof PlanReleased said
                                        && said.plan().variant().equals(about.called())
                                ? PlanDraft.of(said.plan())
                                : null;
                    case STAGES -> stages(saying);
                });
    }

    private Drafted stages(Saying saying) {
        StagesDraft before =
                inForce().map(version -> (StagesDraft) version.what()).orElse(StagesDraft.empty());
        if (saying instanceof StageDefined said) {
            return before.with(said.stage());
        }
        return saying instanceof StationDefined said ? before.with(said.station()) : null;
    }

    /**
     * A draft ends with the release of what it says. A release of something else, by an import say, leaves it where it is:
     * its base is then no longer in force, and its author has to look at it again.
     */
    private Revisions and(Drafted what, Entry entry) {
        var all = new ArrayList<>(versions);
        // Stages and stations are defined one by one: those of one moment are one revision.
        boolean same = about.thing() == About.Thing.STAGES
                && inForce().map(Version::moment).equals(Optional.of(entry.moment()));
        if (same) {
            all.remove(all.size() - 1);
        }
        int next = all.isEmpty() ? 1 : all.get(all.size() - 1).revision() + 1;
        // A plan that came with a file has the number that the file gave it.
        int number = entry.saying() instanceof PlanReleased said ? said.plan().revision() : next;
        all.add(new Version(number, what, entry.moment()));
        boolean open = draft.isPresent() && !draft.get().what().equals(what);
        return new Revisions(about, all, open ? draft : Optional.empty(), open ? authors : Set.of());
    }
}

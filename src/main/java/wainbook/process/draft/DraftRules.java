package wainbook.process.draft;

import java.util.ArrayList;
import java.util.List;
import wainbook.act.Reason;
import wainbook.works.Role;

/**
 * Who may do what with a draft: decided from the paper as it stands, what is in force round it, and who asks. Reasons come
 * in the order role, draft there, seen, state, persons, base, faults.
 */
public record DraftRules(Revisions revisions, Surroundings surroundings, String who, List<Role> roles) {

    private static final String TWO_PERSONS =
            "ISO 9001:2015 7.5.2, review and approval (clause from memory); two persons: works rule";

    public DraftRules {
        roles = List.copyOf(roles);
    }

    /** A draft may be kept unfinished, with faults; what it was begun from must be named truly. */
    public List<Reason> againstKeeping(long seen, int base) {
        List<Reason> against = role();
        if (!against.isEmpty()) {
            return against;
        }
        against.addAll(stale(seen));
        boolean truly = base == revisions.revision()
                || revisions.draft().filter(kept -> kept.base() == base).isPresent();
        if (!truly) {
            against.add(baseChanged(base));
        }
        return against;
    }

    public List<Reason> againstProposing(long seen) {
        List<Reason> against = there(seen);
        if (against.isEmpty()) {
            Revisions.Kept kept = revisions.draft().orElseThrow();
            if (kept.proposed().isPresent()) {
                against.add(reason("process.proposedAlready"));
            }
            if (!revisions.authors().contains(who)) {
                against.add(reason("process.notYourDraft"));
            }
            against.addAll(unfit(kept));
        }
        return against;
    }

    public List<Reason> againstReleasing(long seen) {
        List<Reason> against = there(seen);
        if (against.isEmpty()) {
            Revisions.Kept kept = revisions.draft().orElseThrow();
            if (kept.proposed().isEmpty()) {
                against.add(reason("process.notProposed"));
            }
            if (revisions.authors().contains(who)) {
                against.add(Reason.of(
                        "process.ownDraft", TWO_PERSONS, revisions.about().inWords()));
            }
            against.addAll(unfit(kept));
        }
        return against;
    }

    public List<Reason> againstDropping(long seen) {
        return there(seen);
    }

    /** What keeps it from being released whoever asks. */
    private List<Reason> unfit(Revisions.Kept kept) {
        var against = new ArrayList<Reason>();
        if (kept.base() != revisions.revision()) {
            against.add(baseChanged(kept.base()));
        }
        if (revisions
                .inForce()
                .filter(version -> version.what().equals(kept.what()))
                .isPresent()) {
            against.add(reason("process.nothingChanged"));
        }
        against.addAll(kept.what().faults(surroundings));
        return against;
    }

    private List<Reason> there(long seen) {
        List<Reason> against = role();
        if (against.isEmpty() && revisions.draft().isEmpty()) {
            against.add(reason("process.noDraft"));
        } else if (against.isEmpty()) {
            against.addAll(stale(seen));
        }
        return against;
    }

    private List<Reason> role() {
        var against = new ArrayList<Reason>();
        if (!roles.contains(Role.WORKS_ENGINEER) && !roles.contains(Role.QUALITY_ENGINEER)) {
            against.add(reason("process.draftRole"));
        }
        return against;
    }

    private List<Reason> stale(long seen) {
        return seen == revisions.seen() ? List.of() : List.of(reason("process.draftChangedSince"));
    }

    private Reason baseChanged(int base) {
        return Reason.of(
                "process.baseChanged", Reason.WORKS_RULE, revisions.about().inWords(), base, revisions.revision());
    }

    private Reason reason(String key) {
        return Reason.of(key, Reason.WORKS_RULE, revisions.about().inWords());
    }
}

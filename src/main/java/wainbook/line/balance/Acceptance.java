package wainbook.line.balance;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.line.balance.content.ContentLook;
import wainbook.process.Releases;
import wainbook.process.draft.About;
import wainbook.process.draft.DraftLook;
import wainbook.process.draft.Drafting;
import wainbook.process.draft.SheetDraft;
import wainbook.process.sheet.CheckSheet;

/**
 * Makes drafts of a proposal's check sheets, all or none; nothing is released by it. A sheet that has a draft already bars it, since
 * that draft is somebody's work.
 */
@ApplicationScoped
public class Acceptance {

    private static final int LONGEST_S = 60;

    /** Ends the transaction of all drafts. */
    private static final class Barred extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final transient List<Reason> reasons;

        private Barred(List<Reason> reasons) {
            super(null, null, false, false);
            this.reasons = reasons;
        }
    }

    private final Ledger ledger;
    private final Releases releases;
    private final DraftLook drafts;
    private final Drafting drafting;
    private final ContentLook look;

    Acceptance(Ledger ledger, Releases releases, DraftLook drafts, Drafting drafting, ContentLook look) {
        this.ledger = ledger;
        this.releases = releases;
        this.drafts = drafts;
        this.drafting = drafting;
        this.look = look;
    }

    /** The sheets that would be drafted; empty if the proposal does not fit today's sheets any more. */
    public Optional<List<CheckSheet>> sheets(Proposal proposal) {
        return new Resheeting(
                        releases.routes(),
                        Resheeting.byCode(releases.sheets().stream()),
                        look.now().placed())
                .changed(proposal.moves());
    }

    /** @return the codes of the sheets that have a draft now */
    public Outcome<List<String>> accept(UUID id, Proposal proposal, Actor actor) {
        Optional<List<CheckSheet>> sheets = sheets(proposal).filter(all -> !all.isEmpty());
        if (sheets.isEmpty()) {
            return Outcome.refused(
                    Reason.of("line.balanceChanged", Reason.WORKS_RULE).liftedAt("/balance#search"));
        }
        try {
            return ledger.together(LONGEST_S, () -> Outcome.done(kept(id, sheets.get(), actor)));
        } catch (Barred barred) {
            return Outcome.refused(barred.reasons);
        }
    }

    private List<String> kept(UUID id, List<CheckSheet> sheets, Actor actor) {
        var against = new ArrayList<Reason>();
        for (CheckSheet sheet : sheets) {
            var draft = new SheetDraft(sheet);
            int base = drafts.revisions(draft.about()).revision();
            UUID each = UUID.nameUUIDFromBytes((id + sheet.code()).getBytes(StandardCharsets.UTF_8));
            Outcome<Entry> outcome = drafting.keep(new Drafting.ToKeep(each, draft, base, 0), actor);
            outcome.reasons().stream()
                    .map(reason -> reason.key().equals("process.draftChangedSince") ? drafted(draft.about()) : reason)
                    .forEach(against::add);
        }
        if (!against.isEmpty()) {
            throw new Barred(against);
        }
        return sheets.stream().map(CheckSheet::code).toList();
    }

    private static Reason drafted(About about) {
        return Reason.of("line.balanceDrafted", Reason.WORKS_RULE, about.inWords())
                .liftedAt(about.path() + "/draft");
    }
}

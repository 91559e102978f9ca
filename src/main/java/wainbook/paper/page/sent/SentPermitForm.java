package wainbook.paper.page.sent;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wainbook.permit.PermitForm;
import wainbook.permit.PermitSaying.Ticked;
import wainbook.permit.Precaution;
import wainbook.permit.Trait;
import wainbook.permit.Work;

/** A permit form as it was typed over. */
public final class SentPermitForm {

    private SentPermitForm() {}

    public static PermitForm read(ByHand hand) {
        Optional<Work> sort = Arrays.stream(Work.values())
                .filter(one -> one.name().equals(hand.filled().value("sort")))
                .findFirst();
        if (sort.isEmpty()) {
            hand.wrong("sort", "permit.sortMissing");
        }
        String issuer = hand.must("sign.issued.who");
        Instant issuedAt = hand.mustTime("sign.issued.time");
        hand.begins(issuedAt);
        return new PermitForm(
                sort.orElse(Work.CONTRACTOR),
                hand.must("work"),
                circumstances(hand),
                precautions(hand),
                issuer,
                issuedAt,
                hand.must("sign.received.who"),
                hand.time("sign.received.time"),
                hand.mustTime("sign.until.time"),
                hand.time("sign.handedBack.time"),
                hand.time("sign.closed.time"));
    }

    private static List<Trait> circumstances(ByHand hand) {
        return Trait.circumstances().stream()
                .filter(trait -> hand.filled().value(trait.name()).equals("yes"))
                .toList();
    }

    private static List<Ticked> precautions(ByHand hand) {
        var ticked = new ArrayList<Ticked>();
        for (Precaution precaution : Precaution.values()) {
            if (hand.filled().value(precaution.name()).equals("yes")) {
                ticked.add(new Ticked(precaution, hand.text(precaution.name() + ".naming")));
            }
        }
        return ticked;
    }
}

package wainbook.isolation.permit;

import java.time.Instant;
import wainbook.isolation.IsolationSaying;

/** A permit for live work: one tester, and a second person with no other task, who accepts it under their own sign-in. */
public record LivePermit(
        int number,
        String issuer,
        String tester,
        String second,
        String gloves,
        Instant validUntil,
        boolean testerRead,
        boolean secondRead) {

    public static LivePermit issued(String issuer, IsolationSaying.LivePermitIssued said) {
        return new LivePermit(
                said.permit(),
                issuer,
                said.tester(),
                said.second(),
                said.gloves().code(),
                said.validUntil(),
                false,
                false);
    }

    public boolean accepted() {
        return testerRead && secondRead;
    }

    public boolean names(String person) {
        return tester.equals(person) || second.equals(person);
    }

    public LivePermit readBy(String person) {
        return new LivePermit(
                number,
                issuer,
                tester,
                second,
                gloves,
                validUntil,
                testerRead || tester.equals(person),
                secondRead || second.equals(person));
    }
}

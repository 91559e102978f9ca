package wainbook.walk;

import wainbook.walk.Hands.Answer;

/** What people do at the handover bay, by pages or by the API. Its words are those of the walk, the same by both. */
interface Bay {

    Answer read(String user, int odometerKm);

    Answer pictured(String user);

    Answer given(String user);

    Answer instructed(String user);

    Answer warranty(String user, int odometerKm);

    Answer snag(String user, String defect);

    Answer closed(String user, int snag);

    /** Signed by the operator's person: drawn, or by a typed name. */
    Answer signed(String user, boolean drawn);

    Answer nobodySigns(String user, String witness, String password);
}

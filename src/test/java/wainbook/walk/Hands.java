package wainbook.walk;

import java.util.List;
import java.util.Map;

/**
 * What people of the demo works do at one vehicle, by pages or by the API: the same acts, named alike. Values are texts, or
 * lists of texts where several are given.
 */
interface Hands {

    /** What came of an act: done, kept as an observation that does not count, or refused. */
    interface Answer {

        boolean done();

        /** Whether the refusal, or the note beside what was kept, names this rule. */
        boolean names(String key);
    }

    Answer order(String user, Map<String, String> facts);

    Answer donor(String user, String vin, String registration, int odometerKm);

    Answer fact(String user, String fact, String stated);

    /** @param reply by the names of the API's reply; {@code boltsNm}, {@code anglesDeg} and {@code cells} are lists */
    Answer entry(String user, String item, Map<String, Object> reply);

    Answer entry(String user, String item, String instrument, Map<String, Object> reply);

    Answer file(String user, String item);

    /** Voids the last entry of an item. */
    Answer voidLast(String user, String item, String reason);

    /** @param with by the names of the API; the time a paper is valid until is left to the hands */
    Answer step(String user, String step, Map<String, Object> with);

    Answer sign(String user, String stage, String password);

    /** Signs what was looked at when this was called; {@code meanwhile} happens before the signature is sent. */
    Answer signAfter(String user, String stage, Runnable meanwhile);

    Answer refuse(String user, String stage, List<String> items, String reason);

    Answer move(String user, String direction, String to);

    Answer moveBack(String user, String stage, String to);

    Answer hold(String user, String kind, List<String> stops, String reason);

    Answer release(String user, int hold, String reason);

    Answer dispose(String user, int nonconformity, String disposition, String because);

    /** Notes a document as in hand; {@code validUntil} is empty where it has no end. */
    Answer document(String user, String requirement, String reference, String validUntil);

    /** Notes an appointment after the line as passed. */
    Answer passed(String user, String appointment);

    /** Issues a document of the works. */
    Answer issue(String user, String document, String password);

    /** Releases the vehicle for the road, for a driver. */
    Answer roadRelease(String user, String driver, String password);

    /** Logs a drive on the road; {@code defects} is empty where nothing keeps it off the road. */
    Answer roadDrive(String user, int fromKm, int toKm, String defects);

    /** What is done at the handover bay. */
    Bay bay();

    Answer handOver(String user, String receivedBy);

    Answer reSequence(String user, String item, String toStage, List<String> bars, String reason);
}

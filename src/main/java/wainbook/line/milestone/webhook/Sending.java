package wainbook.line.milestone.webhook;

import wainbook.line.milestone.webhook.Delivery.Outgone;

/** Sends one message and says what came of it; in tests it can fail after it was sent. */
interface Sending {

    /**
     * @param time of sending, ISO 8601 in UTC
     * @param body JSON
     */
    record Message(String address, String secret, String id, String time, String body) {}

    Outgone send(Message message);
}

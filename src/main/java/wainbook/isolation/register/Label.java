package wainbook.isolation.register;

import wainbook.isolation.fact.Register;
import wainbook.page.ScanCode;

/** What is stuck on a numbered thing: its number in large letters, and the same as a code for the scanner. */
public record Label(Register.Item item, String ownerName, ScanCode code) {

    static Label of(Register.Item item, String ownerName) {
        return new Label(item, ownerName, ScanCode.of(item.number()));
    }

    public String what() {
        return RegisterLook.what(item.sort());
    }
}

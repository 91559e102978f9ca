package wainbook.engineering;

import java.util.List;

/** Inputs with a rule between fields, asked only once each field is well by itself. */
public interface Checked {
    List<Fault> faults();
}

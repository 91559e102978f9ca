/** The register of instruments: what is due, one instrument with its calibrations, and the acts that keep it. */
package wainbook.works.instruments;

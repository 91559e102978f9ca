/** What else draws on the packs: hydraulics, shafts, heating. */
package wainbook.engineering.energy.consumers;

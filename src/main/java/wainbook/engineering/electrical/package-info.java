/** Insulation resistance, bonding, discharge, stored energy, insulation monitors, precharging. */
package wainbook.engineering.electrical;

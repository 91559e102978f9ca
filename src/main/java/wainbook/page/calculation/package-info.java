/** Calculations for whoever asks from outside: their list, their fields, and their answers as JSON. */
package wainbook.page.calculation;

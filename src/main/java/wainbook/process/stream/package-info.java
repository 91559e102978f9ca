/** What comes out of a vehicle: its entry in the List of Waste, what becomes of it, and what a litre of it weighs. */
package wainbook.process.stream;

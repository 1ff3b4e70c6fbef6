package plan

import "testing"

// TestPublishedSchedules works one bread's sample schedules back from
// their last clock. Its steps take as long in all of them except the
// fermentation and the retarding, which the page lets run from 7 h to
// 12 h. Source: handcraft.pl, "White country bread with seeds, sample
// schedules" (read).
func TestPublishedSchedules(t *testing.T) {
	for _, test := range []struct {
		name                    string
		fermentation, retarding int // min
		done                    string
		clocks                  []string
	}{
		{"A", 230, 8 * 60, "22:00", []string{"06:00", "06:15", "06:35", "06:50", "10:40", "11:00",
			"12:00", "20:00", "21:00"}},
		{"B", 230, 7 * 60, "20:00", []string{"05:00", "05:15", "05:35", "05:50", "09:40", "10:00",
			"11:00", "18:00", "19:00"}},
		{"C", 220, 7*60 + 10, "08:00", []string{"17:00", "17:15", "17:35", "17:50",
			"21:30", "21:50",
			"22:50", "06:00", "07:00"}},
		{"D", 220, 12*60 + 10, "13:00", []string{"17:00", "17:15", "17:35", "17:50",
			"21:30", "21:50",
			"22:50", "11:00", "12:00"}},
	} {
		c := Chain{}
		for _, minutes := range []int{15, 20, 15, test.fermentation, 20, 60,
			test.retarding, 60, 60} {
			c.Tasks = append(c.Tasks, Task{Lo: 60 * minutes, Hi: 60 * minutes})
		}
		c.Made = len(c.Tasks)
		s := Solve([]Chain{c})
		ready, err := ReadClock(test.done)
		if err != nil {
			t.Fatal(err)
		}
		for k, want := range test.clocks {
			begin, _ := s.Task(0, k)
			if got := (ready + Clock(begin.Lo)).String(); begin.Lo != begin.Hi || got != want {
				t.Errorf("option %s, step %d begins at %s, published %s", test.name, k+1, got, want)
			}
		}
	}
}

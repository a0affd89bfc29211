-- Jobs with their earlier states, and the ticks and readings of their checklists.
create table job (
  id      text primary key,
  title   text not null,
  version integer not null,
  created text not null,
  changed text not null
) strict, without rowid;

create index job_changed on job (changed desc);

create table job_state (
  job     text not null references job (id) on delete cascade,
  number  integer not null,
  name    text not null,
  kept    integer not null,
  said    text not null,
  said_at text not null,
  stated  text not null, -- JSON: [{"fact": …, "written": …}]
  dropped text not null, -- JSON: [fact]
  skipped text not null, -- JSON: [fact]
  began   text not null,
  changed text not null,
  primary key (job, number)
) strict, without rowid;

create table job_mark (
  job      text not null references job (id) on delete cascade,
  practice text not null,
  ticked   integer not null,
  reading  text not null,
  initials text not null,
  changed  text not null,
  primary key (job, practice)
) strict, without rowid;
